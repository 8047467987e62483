namespace Configurator.Core.Tests.Conventions;

/// <summary>The numbers of the style page, over all files below <c>src</c>.</summary>
public class LayoutTests
{
    private const int LinesMax = 400;
    private const int LinesOfNineInTen = 200;
    private const int LinesOfHalf = 60;
    private const int ColumnsMax = 120;

    [Fact]
    public void No_file_is_longer_than_four_hundred_lines() => Assert.Empty(CheckSources.Product
        .Where(file => file.Lines.Length > LinesMax)
        .Select(file => FormattableString.Invariant($"{file.Path}: {file.Lines.Length} lines")));

    [Fact]
    public void Nine_files_in_ten_are_shorter_than_two_hundred_lines() => Assert.True(Share(LinesOfNineInTen) >= 0.9, $"{Share(LinesOfNineInTen):P0}");

    [Fact]
    public void Half_of_the_files_are_shorter_than_sixty_lines() => Assert.True(Share(LinesOfHalf) >= 0.5, $"{Share(LinesOfHalf):P0}");

    // A sentence that is longer than a line is not broken, nor is the reason of a suppression, which stands on its line.
    [Fact]
    public void No_line_is_wider_than_a_hundred_and_twenty_columns_but_for_a_text_in_it() => CheckSources.NoLine(
        CheckSources.Product, line => WidthWithoutText(line) > ColumnsMax && !line.StartsWith("#pragma", StringComparison.Ordinal));

    [Fact]
    public void A_namespace_is_the_folder_of_its_file() => Assert.All(
        CheckSources.Product,
        file => Assert.DoesNotContain(
            file.Lines, line => line.StartsWith("namespace ", StringComparison.Ordinal) && line != $"namespace {NamespaceOf(file.Path)};"));

    [Fact]
    public void No_file_starts_with_a_header() => Assert.Empty(CheckSources.Product
        .Where(file => file.Lines.FirstOrDefault(line => line.Length > 0) is { } first && first.TrimStart().StartsWith('/'))
        .Select(file => file.Path));

    // Written in two parts, so that this file holds neither word.
    [Theory]
    [InlineData("TO" + "DO")]
    [InlineData("FIX" + "ME")]
    [InlineData("HA" + "CK")]
    public void Nothing_is_left_for_later(string word) =>
        CheckSources.NoLine(CheckSources.Below("src").Concat(CheckSources.Below("tests")), line => line.Contains(word, StringComparison.Ordinal));

    private static int WidthWithoutText(string line)
    {
        var start = line.IndexOf('"', StringComparison.Ordinal);
        return start < 0 ? line.Length : line.Length - (line.LastIndexOf('"') - start);
    }

    private static double Share(int lines) => (double)CheckSources.Product.Count(file => file.Lines.Length < lines) / CheckSources.Product.Length;

    private static string NamespaceOf(string path) => string.Join('.', path.Split('/')[1..^1]);
}
