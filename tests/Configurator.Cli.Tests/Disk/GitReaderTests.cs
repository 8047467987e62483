using System.Text;
using Configurator.Cli.Disk;
using Configurator.Cli.Tests.Support;

namespace Configurator.Cli.Tests.Disk;

/// <summary>Reading a catalogue out of a revision.</summary>
public sealed class GitReaderTests : IDisposable
{
    private const string Git = "git -c user.name=tester -c user.email=tester@example.org -c commit.gpgsign=false -c core.hooksPath=/dev/null";

    private readonly TempFolder _folder = new();

    public GitReaderTests()
    {
        Repository.Copy(Path.Combine(Repository.Cases, "base", "input"), _folder.Root);
        Run($"{Git} init -q -b main . && {Git} add -A && {Git} commit -qm first && git tag first");
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_revision_reads_like_the_folder_it_was_made_from() =>
        Assert.Equal(Words(CatalogueReader.Read(_folder.Root)), Words(GitReader.Read(_folder.Root, "first")));

    [Fact]
    public void What_lies_in_the_work_tree_does_not_count_and_stays()
    {
        _folder.Write("options/lids/new.yaml", "option: new\n");
        File.Delete(_folder["options/lids/top-film.yaml"]);
        var before = _folder.Tree("");

        var reading = GitReader.Read(_folder.Root, "HEAD");

        Assert.Contains(reading.Sources.Files, file => file.Path == "options/lids/top-film.yaml");
        Assert.DoesNotContain(reading.Sources.Files, file => file.Path == "options/lids/new.yaml");
        Assert.Equal(before, _folder.Tree(""));
    }

    [Fact]
    public void A_folder_below_the_top_of_a_repository_is_read_there()
    {
        Run($"mkdir -p plant/north && git mv machines options site-templates plant/north/ && {Git} commit -qm moved");
        Assert.Equal(
            Words(CatalogueReader.Read(_folder["plant/north"])), Words(GitReader.Read(_folder["plant/north"], "main")));
        Assert.Contains("`first` has no folder `plant/north`", GitReader.Read(_folder["plant/north"], "first").Problem!.Why, StringComparison.Ordinal);
    }

    // Source: the same rules as for folders on disk, see CatalogueRefusalTests.
    [Fact]
    public void Links_hidden_files_and_odd_names_are_treated_as_on_disk()
    {
        _folder.Link("options/lids/link.yaml", "/etc/passwd");
        _folder.Write("options/lids/.hidden.yaml", "option: hidden\n");
        _folder.Write("options/lids/Top-Film.yaml", "option: top-film\n");
        _folder.Write("options/lids/\u202Eodd.yaml", "option: odd\n");
        _folder.Write("options/lids/picture.png", "no picture");
        Run($"{Git} add -A && {Git} commit -qm odd");

        Assert.Equal(Words(CatalogueReader.Read(_folder.Root)), Words(GitReader.Read(_folder.Root, "HEAD")));
        Assert.Equal(4, GitReader.Read(_folder.Root, "HEAD").Sources.Refused.Length);
    }

    [Theory]
    [InlineData("--output=stolen", "is not a revision")]
    [InlineData("-h", "is not a revision")]
    [InlineData("", "is not a revision")]
    [InlineData("a\nb", "is not a revision")]
    [InlineData("no-such-branch", "there is neither a folder nor a revision")]
    [InlineData("first; touch stolen", "there is neither a folder nor a revision")]
    [InlineData("$(touch stolen)", "there is neither a folder nor a revision")]
    [InlineData("first..main", "there is neither a folder nor a revision")]
    public void What_is_no_revision_is_refused_and_never_obeyed(string revision, string why)
    {
        Assert.Contains(why, GitReader.Read(_folder.Root, revision).Problem!.Why, StringComparison.Ordinal);
        Assert.False(File.Exists(_folder["stolen"]));
    }

    [Fact]
    public void A_folder_in_no_repository_says_so()
    {
        using var outside = new TempFolder();
        Assert.Contains("is in no git repository that can be read: fatal: not a git repository", GitReader.Read(outside.Root, "main").Problem!.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_revision_without_definitions_says_so()
    {
        Run($"git rm -rq machines options && {Git} commit -qm empty");
        Assert.Contains("has neither a folder `machines` nor a folder `options`", GitReader.Read(_folder.Root, "main").Problem!.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_git_the_problem_is_the_environment()
    {
        var ran = Tool.RunIn(_folder.Root, [("PATH", _folder["nothing"])], "review", "first");
        Assert.Equal(3, ran.ExitCode);
        Assert.StartsWith("configurator: git is not installed or cannot be started\n  to fix: install git", ran.Errors, StringComparison.Ordinal);
    }

    private void Run(string script) => Shell.Run(_folder.Root, script);

    private static string Words(CatalogueReading reading)
    {
        Assert.Null(reading.Problem);
        var words = new StringBuilder();
        foreach (var file in reading.Sources.Files)
        {
            words.Append(file.Path).Append(' ').Append(Convert.ToHexString(file.Bytes.Span)).Append('\n');
        }

        foreach (var refused in reading.Sources.Refused)
        {
            words.Append(refused.Path).Append(' ').Append(refused.Why).Append('\n');
        }

        return words.ToString();
    }
}
