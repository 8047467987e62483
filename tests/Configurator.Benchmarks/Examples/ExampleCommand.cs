namespace Configurator.Benchmarks.Examples;

/// <summary>Evaluates worked examples and prints <c>id TAB pass|fail TAB got</c> lines.</summary>
internal static class ExampleCommand
{
    public static int Run(string path, TextWriter output)
    {
        var failed = 0;
        foreach (var row in ExampleRow.Read(File.ReadAllText(path)))
        {
            var judgement = Judgement.Of(row, ExampleTables.Beside(path));
            failed += judgement.IsPass ? 0 : 1;
            output.WriteLine(judgement);
        }

        return failed == 0 ? 0 : 1;
    }
}
