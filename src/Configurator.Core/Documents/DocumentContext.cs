using System.Collections.Immutable;
using System.Globalization;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering;
using Configurator.Core.Engineering.Box;
using Configurator.Core.Logic;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Documents;

/// <summary>What every page is made from, and how things are called and printed on it.</summary>
/// <param name="Definitions">Revision of the definitions, as given to the run; empty where none was.</param>
internal sealed record DocumentContext(EngineeredCatalogue Engineered, SiteWords Words, string Definitions)
{
    public Catalogue Catalogue => Engineered.Catalogue;

    public Designations Designations { get; } = new(Engineered.Catalogue.Site.Designations);

    /// <summary>Inputs and outputs of the box, machine by machine.</summary>
    public ImmutableDictionary<MachineId, BoxNumbers> Numbers { get; } =
        Engineered.Proved.Logic.ToImmutableDictionary(
            proof => proof.Key,
            proof => proof.Value.Logic.Machine.IsWhole ? BoxNumbers.Of(proof.Value.Logic) : BoxNumbers.None
        );

    /// <summary>What cannot be added to each published configuration, by document number.</summary>
    public ImmutableDictionary<string, ImmutableArray<OptionId>> Excluded { get; } =
        Engineered
            .Configurations.DistinctBy(configuration => configuration.Published.Document.Value, StringComparer.Ordinal)
            .ToImmutableDictionary(
                configuration => configuration.Published.Document.Value,
                configuration =>
                    ImmutableArray.CreateRange(
                        Engineered
                            .Proved.Logic[configuration.Machine.Id.Value]
                            .Logic.States(PartialOrder.Of(configuration.Published.Order))
                            .Where(option => option.Value.IsRuledOut)
                            .Select(option => option.Key)
                    ),
                StringComparer.Ordinal
            );

    public UnitPrinter Units { get; } = new(Engineered.Catalogue.Site.Units);

    public string Language => Words.Language;

    public string SiteTitle => In(Catalogue.Site.Title);

    public string In(Text? text) => text?.In(Language) ?? "";

    public string Print(Quantity? quantity) => Units.Of(quantity);

    public static string Print(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    public static string Print(int number) => number.ToString(CultureInfo.InvariantCulture);

    public string YesNo(bool value) => value ? Words.Yes : Words.No;

    public Links On(string path) => new(this, path);

    public DocumentControl Control(PublishedConfiguration published, string suffix) =>
        new(
            $"{published.Document.Value}-{suffix}",
            published.Revision,
            published.Released is null ? Words.Draft : Words.Released,
            published.Released is { } release ? $"{In(release.By)}, {Print(release.On)}" : "",
            Definitions.Length > 0 ? Definitions : Words.NotStated
        );
}

/// <summary>Links as they stand on one page.</summary>
internal sealed record Links(DocumentContext Context, string Path)
{
    public Link To(string target, string text) => new(text, PagePaths.Relative(Path, target));

    public Link Catalogue => To(PagePaths.Catalogue, Context.SiteTitle);

    public Link Machine(Machine machine) => To(PagePaths.Of(machine.Id.Value), Context.In(machine.Title));

    public Link Option(OptionId option) =>
        Context.Catalogue.Options.TryGetValue(option, out var found)
            ? To(PagePaths.Of(option), Context.In(found.Title))
            : new(option.Value);

    /// <summary>The options of an order, with their number where it is not one.</summary>
    public IEnumerable<Link> Taken(Configuration configuration) =>
        configuration.Quantities.Select(pick =>
            pick.Value == 1
                ? Option(pick.Key)
                : Option(pick.Key) with
                {
                    Text = FormattableString.Invariant($"{pick.Value} × {Option(pick.Key).Text}"),
                }
        );

    public Link Device(Device device) => To(PagePaths.Of(device.Id.Value), Context.In(device.Title));

    public Link Configuration(PublishedConfiguration published) =>
        To(PagePaths.Of(published), Context.In(published.Title));

    /// <summary>What brings an instance: an option, or the standard machine.</summary>
    public Link Source(FitInstance instance) =>
        instance.Option is { } option ? Option(option.Id.Value) : new(Context.Words.Standard);

    public ImmutableArray<Link> CrumbsTo(Machine machine) => [Catalogue, Machine(machine)];
}
