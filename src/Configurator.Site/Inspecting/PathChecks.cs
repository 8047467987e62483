using Configurator.Core.Diagnostics;

namespace Configurator.Site.Inspecting;

internal static class PathChecks
{
    public static IEnumerable<Diagnostic> Check(string path)
    {
        if (!SitePath.IsSound(path))
        {
            yield return InspectionDiagnostics.BadPath(path);
        }
        else if (!SitePath.HasAllowedEnding(path))
        {
            yield return InspectionDiagnostics.BadType(path);
        }
    }
}
