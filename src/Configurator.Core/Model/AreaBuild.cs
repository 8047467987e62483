using Configurator.Core.Model.Units;
using Configurator.Core.Sources;

namespace Configurator.Core.Model;

/// <summary>How cables and boxes are mounted in an area.</summary>
/// <param name="StandOff">From the surface behind; null where nobody says.</param>
/// <param name="CablesMax">Cables that may end in it; null for no limit.</param>
public sealed record AreaBuild(AreaId Area, Quantity? StandOff, int? CablesMax, SourceSpan Span);
