using Configurator.Cli.Disk;
using Configurator.Cli.Tests.Support;

namespace Configurator.Cli.Tests.Disk;

/// <summary>Compiled templates kept from run to run: faster, and nothing else.</summary>
public sealed class TemplateCacheTests : IDisposable
{
    private readonly TempFolder _work = new();

    public TemplateCacheTests() => Repository.Copy(Path.Combine(Repository.Cases, "base", "input"), _work["catalogue"]);

    public void Dispose() => _work.Dispose();

    private string Kept => _work["caches/configurator-templates"];

    [Fact]
    public void A_site_has_the_same_bytes_with_templates_kept_damaged_or_compiled()
    {
        Publish("first");
        var kept = Directory.GetFiles(Kept);
        Assert.NotEmpty(kept);
        var bytes = kept.Select(File.ReadAllBytes).ToList();
        Publish("kept");
        foreach (var (path, i) in kept.Select((path, i) => (path, i)))
        {
            File.WriteAllBytes(path, i % 3 == 0 ? [] : i % 3 == 1 ? bytes[i][..^1] : [.. bytes[i][..^9], .. "nonsense!"u8]);
        }

        Publish("damaged");

        Assert.All(["kept", "damaged"], site => Assert.Equal(_work.Tree("first"), _work.Tree(site)));
        Assert.All(kept.Zip(bytes), file => Assert.Equal(file.Second, File.ReadAllBytes(file.First)));
        Assert.Equal(kept.Order(StringComparer.Ordinal), Directory.GetFiles(Kept).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Without_templates_kept_nothing_is_written_there()
    {
        Publish("site", "--fresh-templates");
        Tool.Run("publish", "--to", _work["other"], "--catalogue", _work["catalogue"]);

        Assert.False(Directory.Exists(Kept));
        Assert.Equal(_work.Tree("other"), _work.Tree("site"));
    }

    // What is kept is executed: a folder that others can write to is not used.
    [Theory]
    [InlineData("mkdir -p {0} && chmod 770 {0}")]
    [InlineData("mkdir -p {0} && chmod 707 {0}")]
    [InlineData("mkdir -p {0}-elsewhere && chmod 700 {0}-elsewhere && ln -s {0}-elsewhere {0}")]
    [InlineData("mkdir -p $(dirname {0}) && touch {0}")]
    public void A_folder_that_is_not_private_is_not_used(string script)
    {
        Shell.Run(_work.Root, script.Replace("{0}", Kept, StringComparison.Ordinal));
        var cache = new TemplateCache(Kept);

        cache.Save("one", [1, 2, 3]);

        Assert.Null(cache.Load("one"));
        Assert.Equal("", Shell.Run(_work.Root, $"find {Kept}/ -type f 2>/dev/null || true"));
    }

    [Fact]
    public void What_is_kept_comes_back_and_a_thousand_files_are_swept_out()
    {
        var cache = new TemplateCache(Kept);
        cache.Save("one", [1, 2, 3]);
        Assert.Equal([1, 2, 3], cache.Load("one"));
        Shell.Run(Kept, "touch {1..1001}.old");

        cache.Save("two", [4]);

        Assert.Equal(["two.template"], _work.Names("caches/configurator-templates"));
    }

    private void Publish(string site, params string[] more)
    {
        var ran = Tool.RunIn(
            _work.Root, [("XDG_CACHE_HOME", _work["caches"])], ["publish", "--to", site, "--catalogue", "catalogue", .. more]);
        Assert.True(ran.ExitCode == ExitCodes.Fine, ran.Output + ran.Errors);
        Assert.Equal("", ran.Errors);
    }
}
