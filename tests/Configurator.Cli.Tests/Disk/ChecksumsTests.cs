using System.Text;
using Configurator.Cli.Disk;

namespace Configurator.Cli.Tests.Disk;

public class ChecksumsTests
{
    // Source: FIPS 180-2, examples B.1 ("abc") and the empty message.
    private const string OfAbc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
    private const string OfNothing = "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855";

    [Fact]
    public void Files_are_listed_by_the_bytes_of_their_names_with_two_spaces_and_one_line_end()
    {
        var sums = Checksums.Of(new SortedDictionary<string, ReadOnlyMemory<byte>>(StringComparer.OrdinalIgnoreCase)
        {
            ["a/b"] = ReadOnlyMemory<byte>.Empty,
            ["a-b"] = "abc"u8.ToArray(),
            ["a.b"] = ReadOnlyMemory<byte>.Empty,
        });

        Assert.Equal(
            $"{OfAbc}  a-b\n{OfNothing}  a.b\n{OfNothing}  a/b\n",
            Encoding.ASCII.GetString(sums.ToBytes()));
    }

    // Law: what is written is read back as the same list.
    [Fact]
    public void A_list_that_was_written_is_read_as_the_same_list()
    {
        var written = Checksums.Of(SampleSites.Old).ToBytes();

        var read = Checksums.Parse(Encoding.ASCII.GetString(written));

        Assert.Equal(written, read?.ToBytes());
    }

    [Theory]
    [InlineData("")]
    [InlineData("\n")]
    [InlineData(OfAbc)]
    [InlineData(OfAbc + "  index.html")]
    [InlineData(OfAbc + "  \n")]
    [InlineData(OfAbc + " *index.html\n")]
    [InlineData(OfAbc + "  index.html\r\n")]
    [InlineData(OfAbc + "  ../index.html\n")]
    [InlineData(OfAbc + "  /etc/passwd\n")]
    [InlineData(OfAbc + "  SHA256SUMS\n")]
    [InlineData(OfAbc + "  a.html\n\n")]
    [InlineData(OfAbc + "  a.html\n" + OfNothing + "  a.html\n")]
    [InlineData("BA7816BF8F01CFEA414140DE5DAE2223B00361A396177A9CB410FF61F20015AD  a.html\n")]
    [InlineData("zz7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad  a.html\n")]
    [InlineData("ba7816bf  a.html\n")]
    public void Any_other_text_is_no_list_of_ours(string text) => Assert.Null(Checksums.Parse(text));

    [Fact]
    public void A_list_is_not_read_through_a_link_nor_from_a_pipe()
    {
        using var folder = new TempFolder();
        folder.Write("real", $"{OfAbc}  a.html\n");
        folder.Link("linked/SHA256SUMS", "../real");
        Directory.CreateDirectory(folder["piped"]);
        Shell.Run(folder["piped"], "mkfifo SHA256SUMS");

        Assert.Null(Checksums.In(folder["linked"]));
        Assert.Null(Checksums.In(folder["piped"]));
        Assert.Null(Checksums.In(folder["nowhere"]));
    }
}
