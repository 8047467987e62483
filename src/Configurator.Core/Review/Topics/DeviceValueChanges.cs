using System.Collections.Immutable;
using Configurator.Core.Documents;
using Configurator.Core.Engineering;
using Configurator.Core.Loading;
using Configurator.Core.Model;
using Configurator.Core.Review.Kinds;
using Configurator.Core.Sources;

namespace Configurator.Core.Review.Topics;

/// <summary>Devices that keep their name and become something else: every value that their file says
/// otherwise.</summary>
internal static class DeviceValueChanges
{
    /// <summary>As many as a review shows below one change: no core is left out of a usual cable.</summary>
    private const int NamedMax = 11;
    private const int OwnersMax = 4;
    private const string Leads = "leads";

    public static IEnumerable<Change> Of(ReviewContext context)
    {
        var (before, after) = (context.Before.Sources.ByPath(), context.After.Sources.ByPath());
        return context
            .After.Catalogue.Devices.Values.Where(device =>
                context.Before.Catalogue.Devices.ContainsKey(device.Id.Value)
            )
            .SelectMany(device =>
                Of(context, context.Before.Catalogue.Devices[device.Id.Value], device, before, after)
            );
    }

    private static IEnumerable<Change> Of(
        ReviewContext context,
        Device was,
        Device now,
        IReadOnlyDictionary<string, SourceFile> before,
        IReadOnlyDictionary<string, SourceFile> after
    )
    {
        var (old, values) = (Values(before, was), Values(after, now));
        return old
            .Keys.Union(values.Keys, StringComparer.Ordinal)
            .Order(StringComparer.Ordinal)
            .Select(key => new ChangedValue(key, Find(old, key), Find(values, key)))
            .Where(value => value.Was?.Text != value.Now?.Text)
            .GroupBy(value => IsOfLeads(value.Key) ? HardwareKinds.CoresChanged : HardwareKinds.DeviceRedefined)
            .Select(alike => Tell(context, alike.Key, now, [.. alike]));
    }

    private static Change Tell(
        ReviewContext context,
        ChangeKind kind,
        Device device,
        ImmutableArray<ChangedValue> values
    )
    {
        var published = context.PublishedWith(built => Has(built, device));
        return new(
            kind,
            $"`{device.Id.Value}`",
            [
                .. values.Select(value =>
                    value.Now is { } now ? ReviewPlace.After(now.Span) : ReviewPlace.Before(value.Was!.Value.Span)
                ),
                ReviewPlace.After(device.Id.Span),
            ]
        )
        {
            Remark = string.Join("; ", Remarks(context, device, published)),
            Details =
            [
                .. values.Take(NamedMax).Select(value => value.Say()),
                .. values.Length > NamedMax
                    ? [FormattableString.Invariant($"and {values.Length - NamedMax} more values")]
                    : ImmutableArray<string>.Empty,
            ],
            Configurations = published,
            Weight = published.Length,
            PagesBefore = [PagePaths.Of(device.Id.Value)],
            PagesAfter = [PagePaths.Of(device.Id.Value)],
        };
    }

    private static IEnumerable<string> Remarks(ReviewContext context, Device device, ImmutableArray<string> published)
    {
        var owners = Owners(context, device);
        if (owners.Length > 0)
        {
            yield return $"mounted by {owners}";
        }

        if (published.IsEmpty)
        {
            yield return "in no published configuration";
        }

        var delivered = context.DeliveredWith(asBuilt => IsOn(context, asBuilt, device));
        if (!delivered.IsEmpty)
        {
            yield return Concerned.OnDelivered(delivered);
        }
    }

    /// <summary>Options that any order can mount it with, or the standard machine.</summary>
    private static string Owners(ReviewContext context, Device device)
    {
        var owners = context
            .After.Catalogue.Machines.Values.SelectMany(machine => machine.Instances)
            .Where(instance => instance.Device.Id.Value == device.Id.Value)
            .Select(instance => $"`{instance.Key.Source}`")
            .Distinct(StringComparer.Ordinal)
            .Order(StringComparer.Ordinal)
            .ToList();
        return string.Join(", ", owners.Take(OwnersMax))
            + (owners.Count > OwnersMax ? FormattableString.Invariant($" and {owners.Count - OwnersMax} more") : "");
    }

    private static bool IsOn(ReviewContext context, AsBuilt asBuilt, Device device) =>
        context.Before.Catalogue.Machines.TryGetValue(asBuilt.Machine, out var machine)
        && machine.Instances.Any(instance =>
            instance.Device.Id.Value == device.Id.Value && asBuilt.Homes.Homes.ContainsKey(instance.Key)
        );

    private static bool Has(EngineeredConfiguration built, Device device) =>
        built.Report.Fitted.Mounts(device.Id.Value)
        || built.Report.Cables.Any(cable => cable.Cordset?.Id.Value == device.Id.Value);

    private static bool IsOfLeads(string key) => key.StartsWith(Leads, StringComparison.Ordinal);

    private static (string Text, SourceSpan Span)? Find(
        ImmutableSortedDictionary<string, (string Text, SourceSpan Span)> values,
        string key
    ) => values.TryGetValue(key, out var value) ? value : null;

    private static ImmutableSortedDictionary<string, (string Text, SourceSpan Span)> Values(
        IReadOnlyDictionary<string, SourceFile> files,
        Device device
    ) =>
        files.TryGetValue(device.Id.Span.Path, out var file)
        && SourceText.Decode(file) is { } text
        && YamlReader.Read(text).Root is { } root
            ? WrittenValues.Of(root)
            : ImmutableSortedDictionary<string, (string, SourceSpan)>.Empty;

    private sealed record ChangedValue(
        string Key,
        (string Text, SourceSpan Span)? Was,
        (string Text, SourceSpan Span)? Now
    )
    {
        public string Say() =>
            (Was, Now) switch
            {
                ({ } was, { } now) => $"{Key}: {was.Text} → {now.Text}",
                ({ } was, null) => $"{Key}: is gone, was {was.Text}",
                (null, { } now) => $"{Key}: is new, {now.Text}",
                _ => Key,
            };
    }
}
