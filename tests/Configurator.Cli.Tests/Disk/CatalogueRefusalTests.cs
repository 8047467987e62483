using System.Net.Sockets;
using Configurator.Cli.Disk;
using Configurator.Core.Sources;

namespace Configurator.Cli.Tests.Disk;

/// <summary>What lies in a catalogue and is not read is always told, never opened and never followed.</summary>
public class CatalogueRefusalTests
{
    private static RefusedFile Link(string path) =>
        new(path, "this is a link; links are not followed", "put the file or folder itself here");

    private static RefusedFile Special(string path) =>
        new(path, "this is a pipe, a socket or a device, not a file", "remove it");

    [Fact]
    public void Links_to_files_and_folders_are_refused_wherever_they_lead()
    {
        using var folder = new TempFolder();
        folder.Link("machines/etc", "/etc");
        folder.Link("machines/host.yaml", "/etc/hostname");
        folder.Link("options/lost.yaml", "nowhere");
        folder.Link("options/loop", ".");
        folder.Link("site-templates/page.cshtml", "../options/sound.yaml");

        CatalogueCheck.Refuses(
            folder,
            Link("machines/etc"),
            Link("machines/host.yaml"),
            Link("options/loop"),
            Link("options/lost.yaml"),
            Link("site-templates/page.cshtml"));
    }

    [Theory]
    [InlineData("machines")]
    [InlineData("site-templates")]
    public void A_top_folder_that_is_a_link_is_refused(string top)
    {
        using var folder = new TempFolder();
        folder.Write("elsewhere/a.yaml", "");
        folder.Link(top, "elsewhere");

        CatalogueCheck.Refuses(folder, Link(top));
    }

    [Fact]
    public void A_catalogue_whose_only_folder_is_a_link_has_nothing_to_read_and_says_why()
    {
        using var folder = new TempFolder();
        folder.Write("elsewhere/a.yaml", "");
        folder.Link("machines", "elsewhere");

        var reading = CatalogueReader.Read(folder.Root);

        Assert.Null(reading.Problem);
        Assert.Empty(reading.Sources.Files);
        Assert.Equal([Link("machines")], reading.Sources.Refused.ToArray());
    }

    [Fact]
    public void A_file_where_a_top_folder_belongs_is_refused()
    {
        using var folder = new TempFolder();
        folder.Write("machines", "");

        CatalogueCheck.Refuses(folder, new RefusedFile(
            "machines", "`machines` must be a folder", "rename the file and make a folder of that name"));
    }

    [Fact]
    public void A_top_folder_in_another_case_is_refused_so_that_it_is_not_missed_in_silence()
    {
        using var folder = new TempFolder();
        folder.Write("Machines/a.yaml", "");
        folder.Write("SITE-templates/a.yaml", "");

        CatalogueCheck.Refuses(
            folder,
            new RefusedFile("Machines", "only `machines` is read, in lower case", "rename it to `machines`"),
            new RefusedFile(
                "SITE-templates", "only `site-templates` is read, in lower case", "rename it to `site-templates`"));
    }

    // A pipe that is opened blocks until somebody writes to it: were it opened, this test would not end.
    [Fact]
    public void A_pipe_is_refused_unopened()
    {
        using var folder = new TempFolder();
        Directory.CreateDirectory(folder["options"]);
        Shell.Run(folder["options"], "mkfifo pipe.yaml");

        CatalogueCheck.Refuses(folder, Special("options/pipe.yaml"));
    }

    [Fact]
    public void A_socket_is_refused_unopened()
    {
        using var folder = new TempFolder();
        Directory.CreateDirectory(folder["options"]);
        using var socket = new Socket(AddressFamily.Unix, SocketType.Stream, ProtocolType.IP);
        socket.Bind(new UnixDomainSocketEndPoint(folder["options/socket.yaml"]));

        CatalogueCheck.Refuses(folder, Special("options/socket.yaml"));
    }

    [Fact]
    public void A_device_counts_as_no_file() => Assert.Equal(FileKind.Special, FileKinds.Of("/dev/null"));

    [Theory]
    [InlineData("options/large.yaml", 1048576)]
    [InlineData("machines/large.md", 1048576)]
    [InlineData("site-templates/large.cshtml", 1048576)]
    [InlineData("site-templates/large.yaml", 1048576)]
    [InlineData("site-templates/assets/large.svg", 4194304)]
    [InlineData("site-templates/schemas/large.json", 4194304)]
    public void A_file_may_be_as_large_as_its_limit_and_not_a_byte_larger(string path, int limit)
    {
        using var folder = new TempFolder();
        Directory.CreateDirectory(folder["options"]);
        folder.WriteSparse(path, limit);
        Assert.Equal(limit, CatalogueReader.Read(folder.Root).Sources.Files[0].Bytes.Length);

        folder.WriteSparse(path, limit + 1);
        CatalogueCheck.Refuses(folder, new RefusedFile(
            path,
            FormattableString.Invariant($"the file has {limit + 1} bytes; {limit} is the limit"),
            "split it, or move it out of the catalogue"));
    }

    // Were it read whole, this would take the memory of a large computer.
    [Fact]
    public void A_file_of_a_tebibyte_is_refused_unread()
    {
        using var folder = new TempFolder();
        folder.WriteSparse("options/huge.yaml", 1L << 40);

        CatalogueCheck.Refuses(folder, new RefusedFile(
            "options/huge.yaml",
            "the file has 1099511627776 bytes; 1048576 is the limit",
            "split it, or move it out of the catalogue"));
    }

    [Fact]
    public void A_file_that_may_not_be_read_is_told_and_the_others_are_read()
    {
        using var folder = new TempFolder();
        folder.Write("options/secret.yaml", "");
        folder.Write("machines/secret/machine.yaml", "");
        Shell.Run(folder.Root, "echo x > options/secret.yaml; chmod 0 options/secret.yaml machines/secret");

        CatalogueCheck.Refuses(folder, Denied("machines/secret"), Denied("options/secret.yaml"));

        RefusedFile Denied(string path) => new(
            path,
            $"this cannot be read: Access to the path '{folder[path]}' is denied",
            "give the account that runs this the right to that path, or choose another");
    }

    [Fact]
    public void A_folder_whose_entries_may_not_be_looked_at_is_told()
    {
        using var folder = new TempFolder();
        folder.Write("machines/sorter/machine.yaml", "");
        Shell.Run(folder.Root, "chmod 444 machines/sorter");
        folder.Write("options/sound.yaml", "");

        var refused = Assert.Single(Nobody.Does(() => CatalogueReader.Read(folder.Root)).Sources.Refused);

        Assert.StartsWith("machines/sorter", refused.Path, StringComparison.Ordinal);
        Assert.StartsWith("this cannot be read: ", refused.Why, StringComparison.Ordinal);
    }

    // A stack that overflows ends the process, and no handler can stop that. A path holds some 2,000 levels.
    [Fact]
    public void Folders_nested_deeper_than_sixteen_are_told_and_not_entered()
    {
        using var folder = new TempFolder();
        var allowed = "machines" + string.Concat(Enumerable.Repeat("/d", 15));
        Directory.CreateDirectory(folder[allowed + string.Concat(Enumerable.Repeat("/d", 1900))]);

        CatalogueCheck.Refuses(folder, new RefusedFile(
            allowed + "/d", "folders are nested more than 16 deep here", "move what it holds further up"));

        folder.Write(allowed + "/deep.yaml", "");
        Assert.Equal(2, CatalogueReader.Read(folder.Root).Sources.Files.Length);
    }
}
