using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Documents.StructuredText;
using Configurator.Core.Engineering.Signals;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>What the controller program sees of this machine: signals, enable constants, settings of every
/// port.</summary>
internal static class ControllerDocument
{
    public static ConfigurationDocument Document { get; } =
        new(
            "controller",
            EnableConstants.ControllerSuffix,
            words => words.Controller,
            words => words.ControllerLead,
            Sections
        );

    private static IEnumerable<Section> Sections(ConfigurationContext context)
    {
        var words = context.Words;
        yield return new("cautions", words.Cautions, [new Caution(words.Cautions, Cautions.Program(words))]);
        yield return new("files", words.ProgramFiles, [Files(context)]);
        yield return new("signals", words.Signals, [new Paragraph(words.SignalsLead), SignalTable.Of(context)]);
        ImmutableArray<FitInstance> undescribed = [.. SignalList.Undescribed(context.Fitted)];
        if (!undescribed.IsEmpty)
        {
            yield return new(
                "undescribed",
                words.Undescribed,
                [new Paragraph(words.UndescribedLead), Undescribed(context, undescribed)]
            );
        }

        yield return new("enable", words.EnableBits, [new Paragraph(words.EnableLead), Enable(context)]);
        yield return new("ports", words.PortSettings, [new Paragraph(words.PortSettingsLead), PortTable.Of(context)]);
    }

    private static LinkList Files(ConfigurationContext context) =>
        new([
            new(
                context.Links.To(PagePaths.ControllerTypes(context.Engineered.Machine.Id.Value), "controller.st"),
                context.Words.TypesFile
            ),
            new(
                context.Links.To(PagePaths.EnableConstants(context.Engineered.Published), "enable.st"),
                context.Words.EnableFile
            ),
        ]);

    private static Table Undescribed(ConfigurationContext context, ImmutableArray<FitInstance> instances)
    {
        var words = context.Words;
        return new(
            "undescribed",
            words.Undescribed,
            [new(words.Designation), new(words.Device), new(words.Purpose), new(words.Terminal)],
            [
                .. instances.Select(instance =>
                    Row.Of(
                        context.Names.Of(instance),
                        context.Links.Device(instance.Device),
                        context.In(instance.Fit.Purpose),
                        context.Names.TerminalsOf(instance)
                    )
                ),
            ]
        );
    }

    private static Table Enable(ConfigurationContext context)
    {
        var words = context.Words;
        return new(
            "enable-bits",
            words.EnableBits,
            [new(words.Constant), new(words.Value), new(words.Option)],
            [.. context.Engineered.Machine.Options.Values.SelectMany(option => EnableRows(context, option))]
        );
    }

    private static IEnumerable<Row> EnableRows(ConfigurationContext context, Option option)
    {
        var count = EnableConstants.Count(context.Engineered, option);
        yield return Row.Of(
            Tags.Enable(option.Id.Value),
            EnableConstants.Value(count > 0),
            context.Links.Option(option.Id.Value)
        );
        if (option.Quantity is not null)
        {
            yield return Row.Of(
                Tags.Count(option.Id.Value),
                DocumentContext.Print(count),
                context.Links.Option(option.Id.Value)
            );
        }
    }
}
