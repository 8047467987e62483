using System.Collections.Immutable;
using Configurator.Core.Binding.Shapes;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;
using Configurator.Core.Sources;

namespace Configurator.Core.Binding;

/// <summary>Binds options and the other options they name.</summary>
internal static class OptionBinder
{
    public static Names<Option> Bind(
        IEnumerable<DefinitionFile> files,
        NoteLibrary notes,
        FaultyNames faulty,
        Names<Device> devices,
        ICollection<Diagnostic> report
    )
    {
        var given = Unique.By("option", files, file => file.Id, report);
        var read = given.Select(file => (file.Id, Option: Read(file, notes, devices, report))).ToList();
        var options = Names<Option>.Of(
            "option",
            read.Select(entry => entry.Option).OfType<Option>(),
            option => option.Id.Value.Value,
            faulty.Of("option").Concat(read.Where(entry => entry.Option is null).Select(entry => entry.Id.Value))
        );
        return options with
        {
            Known = options.Known.ToImmutableSortedDictionary(
                entry => entry.Key,
                entry => OfKnown(entry.Value, options, report),
                StringComparer.Ordinal
            ),
        };
    }

    /// <summary>The option without what it says of options that do not exist; each of those is reported.</summary>
    private static Option OfKnown(Option option, Names<Option> options, ICollection<Diagnostic> report)
    {
        var unknown = Mentions(option)
            .Where(mention => options.Find(mention, report) is null)
            .Select(mention => new OptionId(mention.Value))
            .ToHashSet();
        return unknown.Count == 0
            ? option
            : option with
            {
                Requires =
                [
                    .. option.Requires.Where(requirement =>
                        !requirement.Condition.Mentions().Any(mention => unknown.Contains(mention.Option))
                    ),
                ],
                NotWith = [.. option.NotWith.Where(link => !unknown.Contains(link.Other.Value))],
                ComesWith = [.. option.ComesWith.Where(link => !unknown.Contains(link.Other.Value))],
                Markets = [.. option.Markets.Where(market => !unknown.Contains(market.Value))],
                Fits =
                [
                    .. option.Fits.Where(fit =>
                        fit.When is null || !fit.When.Mentions().Any(mention => unknown.Contains(mention.Option))
                    ),
                ],
                IsWhole = false,
            };
    }

    private static Option? Read(
        DefinitionFile file,
        NoteLibrary notes,
        Names<Device> devices,
        ICollection<Diagnostic> report
    )
    {
        var f = file.Fields;
        var before = report.Count;
        var quantity = f.Value<Fields>("quantity") is { } range ? ReadQuantity(range, file.Id, report) : null;
        var fits = FitBinder.Bind(f.Records("fits"), devices, report);
        if (fits.Length == f.Records("fits").Length)
        {
            FitBinder.FindFeeders(fits, fits, report);
        }

        TagChecks.OfOption(file.Id, report);
        if (!f.Has("offered-on") || quantity is null == f.Has("quantity"))
        {
            return null;
        }

        var title = f.Value<Text>("title") ?? Text.Of(file.Id.Value);

        return new(file.Id.Select(id => new OptionId(id)), file.Place[0], title)
        {
            Summary = f.Value<Text>("summary") ?? Text.Empty,
            Formerly = f.Many<string>("formerly"),
            OfferedOn = [.. f.Many<string>("offered-on").Select(id => id.Select(text => new MachineId(text)))],
            Quantity = quantity,
            Requires = [.. f.Many<Requirement>("requires").Select(item => item.Value)],
            NotWith = [.. f.Many<OptionLink>("not-with").Select(item => item.Value)],
            ComesWith = [.. f.Many<OptionLink>("comes-with").Select(item => item.Value)],
            Price = f.Value<Quantity>("price"),
            LeadTime = f.Value<Quantity>("lead-time"),
            Released = f.Value<Fields>("released") is { } release ? ConfigurationBinder.ReadRelease(release) : null,
            Markets = [.. f.Many<string>("markets").Select(id => id.Select(text => new OptionId(text)))],
            RateMax = f.Value<Quantity>("rate-at-most"),
            RateRaise = f.Value<Quantity>("raises-rate"),
            Fits = fits,
            TouchesBox = f.Many<BoxTouch>("touches-box"),
            Care = CareBinder.Care(f.Value<Fields>("washing")),
            Notes = notes.Of($"options/{file.Place[0]}/{file.Id.Value}"),
            IsWhole = f.IsWhole && report.Count == before && fits.Length == f.Records("fits").Length,
        };
    }

    private static QuantityRange? ReadQuantity(Fields f, Located<string> option, ICollection<Diagnostic> report)
    {
        if (f.One<int>("from") is not { } from || f.One<int>("to") is not { } to)
        {
            return null;
        }

        if (from.Value > to.Value)
        {
            report.Add(
                BindingDiagnostics.QuantityImpossible(
                    new(option.Value, to.Span),
                    "can be ordered at most fewer times than at least",
                    "swap `from` and `to`"
                )
            );
            return null;
        }

        return new(from.Value, to.Value, f.Value<Text>("counts") ?? Text.Empty);
    }

    /// <summary>Every option that it names, wherever.</summary>
    private static IEnumerable<Located<string>> Mentions(Option option) =>
        option
            .Requires.SelectMany(item => item.Condition.Mentions())
            .Concat(option.Fits.SelectMany(fit => fit.When?.Mentions() ?? []))
            .Select(mention => new Located<string>(mention.Option.Value, mention.Span))
            .Concat(option.NotWith.Concat(option.ComesWith).Select(link => link.Other.Select(id => id.Value)))
            .Concat(option.Markets.Select(market => market.Select(id => id.Value)));
}
