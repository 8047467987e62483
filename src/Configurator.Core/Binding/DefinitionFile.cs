using System.Collections.Immutable;
using Configurator.Core.Binding.Kinds;
using Configurator.Core.Binding.Shapes;
using Configurator.Core.Diagnostics;
using Configurator.Core.Loading;
using Configurator.Core.Sources;

namespace Configurator.Core.Binding;

/// <summary>One definition read after its kind's shape.</summary>
/// <param name="Place">The ids in its path; the last is the name it must have.</param>
internal sealed record DefinitionFile(Kind Kind, Located<string> Id, ImmutableArray<string> Place, Fields Fields)
{
    /// <summary>Reads a file; null where its kind is unknown or it is no map.</summary>
    public static DefinitionFile? Read(SyntaxFile file, ICollection<Diagnostic> report)
    {
        var first = file.Root.Entries[0].Key;
        if (Kind.All.FirstOrDefault(kind => kind.Name == first.Text) is not { } kind)
        {
            report.Add(BindingDiagnostics.KindUnknown(first, Kind.All.Select(kind => kind.Name)));
            return null;
        }

        if (Kind.At(file.Path) != kind || kind.Match(file.Path) is not { } place)
        {
            report.Add(BindingDiagnostics.PlaceWrong(kind.Name, kind.Place, first.Span));
            return null;
        }

        return Read(kind, place, file, report);
    }

    private static DefinitionFile? Read(
        Kind kind,
        ImmutableArray<string> place,
        SyntaxFile file,
        ICollection<Diagnostic> report
    )
    {
        if (
            new ShapeReader(report).ReadRecord(file.Root, kind.Shape) is not { } fields
            || fields.One<string>(kind.Name) is not { } id
        )
        {
            return null;
        }

        if (!place.IsEmpty && id.Value != place[^1])
        {
            report.Add(
                BindingDiagnostics.IdNotFileName(
                    id,
                    place[^1],
                    kind.Place.EndsWith("*.yaml", StringComparison.Ordinal) ? "file" : "folder"
                )
            );
            return null;
        }

        if (
            kind.Place.Contains("{machine}", StringComparison.Ordinal)
            && fields.One<string>("machine") is { } machine
            && machine.Value != place[0]
        )
        {
            report.Add(BindingDiagnostics.IdNotFileName(machine, place[0], "folder"));
            return null;
        }

        return new(kind, id, place, fields);
    }
}
