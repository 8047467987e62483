using Configurator.Cli.Disk;
using Configurator.Core.Sources;

namespace Configurator.Cli.Tests.Disk;

internal static class CatalogueCheck
{
    /// <summary>The catalogue has one sound option besides: it must be read whatever is wrong with the rest.</summary>
    public static void Refuses(TempFolder folder, params RefusedFile[] expected)
    {
        folder.Write("options/sound.yaml", "option: sound");

        var reading = Nobody.Does(() => CatalogueReader.Read(folder.Root));

        Assert.Null(reading.Problem);
        Assert.Equal(expected, reading.Sources.Refused.ToArray());
        Assert.Equal("options/sound.yaml", Assert.Single(reading.Sources.Files).Path);
    }
}
