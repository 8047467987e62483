using System.Collections.Immutable;
using System.Text;
using Configurator.Core.Binding.Schemas;

namespace Configurator.Cli.Disk;

/// <summary>The folder that editors take schemas from. Follows no link, touches only files it is given.</summary>
internal sealed class SchemaFolder(string folder)
{
    /// <summary>What keeps schemas from being written there, or null.</summary>
    public DiskProblem? Judge(IEnumerable<SchemaFile> files)
    {
        if (FileKinds.Of(folder) is not (FileKind.Folder or FileKind.Missing))
        {
            return new($"`{folder}` is not a folder", "choose a new folder, or remove what lies there");
        }

        return files
            .Select(PathOf)
            .Where(path => FileKinds.Of(path) is not (FileKind.Regular or FileKind.Missing))
            .Select(path => new DiskProblem($"`{path}` is not a file", "remove it and run the command again"))
            .FirstOrDefault();
    }

    /// <summary>Those that are not there, or not with these bytes.</summary>
    public ImmutableArray<SchemaFile> Differing(IEnumerable<SchemaFile> files) =>
        [.. files.Where(file => !IsThere(file))];

    /// <summary>Puts each whole file in its place at once, so that an editor never reads half of one.</summary>
    /// <exception cref="IOException">The disk does not take it.</exception>
    public void Write(IEnumerable<SchemaFile> files)
    {
        Directory.CreateDirectory(folder);
        foreach (var file in files)
        {
            var beside = Path.Combine(folder, $".{file.Name}.new");
            File.Delete(beside);
            using (var handle = File.OpenHandle(beside, FileMode.CreateNew, FileAccess.Write))
            {
                DiskWrite.All(handle, Encoding.UTF8.GetBytes(file.Text), beside);
            }

            File.Move(beside, PathOf(file), overwrite: true);
        }
    }

    public string PathOf(SchemaFile file) => Path.Combine(folder, file.Name);

    private bool IsThere(SchemaFile file)
    {
        var path = PathOf(file);
        var bytes = Encoding.UTF8.GetBytes(file.Text);
        return FileKinds.Of(path) == FileKind.Regular
            && new FileInfo(path).Length == bytes.Length
            && File.ReadAllBytes(path).AsSpan().SequenceEqual(bytes);
    }
}
