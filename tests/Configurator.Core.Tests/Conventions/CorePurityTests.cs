using System.Reflection;
using Configurator.Core.Loading;

namespace Configurator.Core.Tests.Conventions;

/// <summary>Core takes text and gives values: it knows no other assembly of ours, no file, no console and no clock.</summary>
public class CorePurityTests
{
    private static readonly Assembly Core = typeof(Loader).Assembly;

    [Fact]
    public void Core_references_nothing_of_ours() => Assert.DoesNotContain(
        Core.GetReferencedAssemblies(), name => name.Name!.StartsWith("Configurator", StringComparison.Ordinal));

    [Theory]
    [InlineData("System.Console")]
    [InlineData("System.IO.FileSystem")]
    [InlineData("System.Diagnostics.Process")]
    [InlineData("System.Net.Http")]
    [InlineData("System.Net.Sockets")]
    public void Core_references_no_assembly_that_reaches_outside(string assembly) => Assert.DoesNotContain(
        Core.GetReferencedAssemblies(), name => name.Name == assembly);

    [Theory]
    [InlineData("File.")]
    [InlineData("Directory.")]
    [InlineData("Console.")]
    [InlineData("DateTime.Now")]
    [InlineData("DateTime.UtcNow")]
    [InlineData("DateTimeOffset.Now")]
    [InlineData("DateTime.Today")]
    [InlineData("TimeProvider.System")]
    [InlineData("Stopwatch.")]
    [InlineData("Environment.")]
    [InlineData("Guid.NewGuid")]
    [InlineData("Random.Shared")]
    public void Core_calls_no_file_console_clock_or_chance(string call) => CheckSources.NoLine(
        CheckSources.Below("src/Configurator.Core"), line => CallsInCode(line, call));

    [Theory]
    [InlineData("YamlDotNet", "Loading")]
    [InlineData("Configurator.Core.Loading", "Model")]
    public void The_model_knows_no_yaml(string name, string allowed) => CheckSources.NoLine(
        CheckSources.Below("src/Configurator.Core/Model").Concat(allowed == "Loading" ? CheckSources.Below("src/Configurator.Core/Binding") : []),
        line => line.StartsWith("using " + name, StringComparison.Ordinal));

    private static bool CallsInCode(string line, string call)
    {
        var code = line.Split("//")[0];
        var at = code.IndexOf(call, StringComparison.Ordinal);
        return at >= 0 && (at == 0 || !(char.IsLetterOrDigit(code[at - 1]) || code[at - 1] is '.' or '_' or '`'));
    }
}
