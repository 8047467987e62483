using System.Diagnostics;
using Configurator.Core.Sources;

namespace Configurator.Site.Rendering;

/// <summary>Finds the line of the template in which an exception started.</summary>
internal static class FailurePlace
{
    public static SourceSpan Of(Exception exception, string key, TemplateProject project)
    {
        var folder = TemplateKey.PathOf("");
        var frame = new StackTrace(exception, fNeedFileInfo: true)
            .GetFrames()
            .FirstOrDefault(it => it.GetFileName()?.StartsWith(folder, StringComparison.Ordinal) == true);
        return frame is null
            ? SourceSpan.FileStart(TemplateKey.PathOf(key))
            : project.LineOf(frame.GetFileName()!, frame.GetFileLineNumber());
    }
}
