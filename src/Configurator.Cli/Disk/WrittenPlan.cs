using System.Text;
using Configurator.Core.Model;
using Configurator.Core.Sources;

namespace Configurator.Cli.Disk;

/// <summary>The file of a port plan.</summary>
internal static class WrittenPlan
{
    public static string PathOf(MachineId machine) => $"machines/{machine}/port-plan.yaml";

    /// <summary>Null where there is none.</summary>
    public static SourceText? Of(SourceSet sources, MachineId machine) =>
        sources.Files.FirstOrDefault(file => file.Path == PathOf(machine)) is { } file ? SourceText.Decode(file) : null;

    /// <summary>Puts the whole file in its place at once; what went wrong, or null.</summary>
    public static DiskProblem? Write(string catalogue, string path, string text)
    {
        var target = Path.Join(catalogue, path);
        var beside = Path.Join(Path.GetDirectoryName(target), ".port-plan.yaml.new");
        if (FileKinds.Of(target) is not (FileKind.Regular or FileKind.Missing))
        {
            return new($"`{target}` is not a file", "remove it and run the command again");
        }

        try
        {
            File.Delete(beside);
            using (var handle = File.OpenHandle(beside, FileMode.CreateNew, FileAccess.Write))
            {
                DiskWrite.All(handle, Encoding.UTF8.GetBytes(text), beside);
            }

            File.Move(beside, target, overwrite: true);
            return null;
        }
        catch (Exception failure) when (DiskProblem.Caused(failure))
        {
            return DiskProblem.From($"cannot write `{target}`", failure);
        }
    }
}
