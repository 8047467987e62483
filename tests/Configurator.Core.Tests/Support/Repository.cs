namespace Configurator.Core.Tests.Support;

/// <summary>The folder that the solution lies in, found from where the tests run.</summary>
internal static class Repository
{
    public static string Folder { get; } = Upward(new(AppContext.BaseDirectory));

    private static string Upward(DirectoryInfo folder) =>
        File.Exists(Path.Combine(folder.FullName, "Configurator.sln")) ? folder.FullName
        : folder.Parent is { } parent ? Upward(parent)
        : throw new InvalidOperationException("the tests run outside the repository");
}
