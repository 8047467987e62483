using Configurator.Core.Documents.Blocks;
using Configurator.Core.Documents.Cables;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>Two labels for each cable, with a code that opens the cable's row where the site has an address.</summary>
internal static class LabelsDocument
{
    public static ConfigurationDocument Document { get; } =
        new("labels", "LB", words => words.Labels, words => words.LabelsLead, Sections);

    private static IEnumerable<Section> Sections(ConfigurationContext context)
    {
        var words = context.Words;
        var address = context.Documents.Catalogue.Site.BaseAddress;
        yield return new(
            "sheet",
            words.LabelSheet,
            [
                new Paragraph(address is null ? words.LabelsWithoutCodes : words.LabelsHaveCodes),
                new LabelSheet(
                    "labels",
                    [.. CableList.Of(context).SelectMany(cable => Labels(context, cable, address))]
                ),
            ]
        );
    }

    private static IEnumerable<CableLabel> Labels(ConfigurationContext context, CableEntry cable, string? address)
    {
        var published = context.Engineered.Published;
        var control = context.Documents.Control(published, CablesDocument.Suffix);
        var code = address is null
            ? null
            : new QrCode($"{address}{PagePaths.Of(published, CablesDocument.Name)}#{cable.Anchor}");
        return [Label(cable.From, cable.To, isFirst: true), Label(cable.To, cable.From, isFirst: false)];

        // The end that the label is fixed to comes first.
        CableLabel Label(CableEnd here, CableEnd there, bool isFirst) =>
            new(
                cable.Name,
                [
                    CableWords.End(context, here),
                    $"> {CableWords.End(context, there)}",
                    $"{control.Number} {context.Words.Revision} {control.Revision}",
                    string.Join(
                        ", ",
                        new[] { control.State, context.Documents.Definitions }.Where(part => part.Length > 0)
                    ),
                ],
                code,
                "code-" + cable.Anchor,
                isFirst
            );
    }
}
