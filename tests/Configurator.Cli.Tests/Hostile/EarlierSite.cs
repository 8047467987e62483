using Configurator.Cli.Tests.Disk;
using Configurator.Cli.Tests.Support;

namespace Configurator.Cli.Tests.Hostile;

/// <summary>The site of the base catalogue, published once, to be copied where a test needs an earlier site.</summary>
public sealed class EarlierSite : IDisposable
{
    private readonly TempFolder _work = new();

    public EarlierSite()
    {
        Repository.Copy(Path.Combine(Repository.Cases, "base", "input"), _work["catalogue"]);
        var (exitCode, said) = Publish(_work["catalogue"], _work["site"]);
        Assert.True(exitCode == ExitCodes.Fine, said);
        Tree = _work.Tree("site");
    }

    /// <summary>Every byte of it.</summary>
    internal string Tree { get; }

    internal void CopyTo(string folder) => Repository.Copy(_work["site"], folder);

    /// <summary>Without the templates that other tests keep.</summary>
    internal static (int ExitCode, string Said) Publish(string catalogue, string target, params string[] more)
    {
        var ran = Tool.Run(["publish", "--fresh-templates", "--to", target, "--catalogue", catalogue, .. more]);
        return (ran.ExitCode, ran.Output + ran.Errors);
    }

    public void Dispose() => _work.Dispose();
}
