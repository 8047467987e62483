using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Loading;
using Configurator.Core.Sources;

namespace Configurator.Core.Binding;

/// <summary>What can be wrong between definitions: names, places, and facts that do not go together.</summary>
internal static partial class BindingDiagnostics
{
    private static readonly Rule UnknownKind = new("CFG2001", Severity.Error, "Unknown kind of definition");
    private static readonly Rule WrongPlace = new("CFG2002", Severity.Error, "Definition in the wrong place");
    private static readonly Rule UnknownName = new("CFG2003", Severity.Error, "Unknown name");
    private static readonly Rule TakenName = new("CFG2008", Severity.Error, "Name already taken");
    private static readonly Rule OtherFile = new("CFG2009", Severity.Error, "Id differs from the file's name");
    private static readonly Rule NotOffered = new("CFG2014", Severity.Error, "Option not offered on this machine");
    private static readonly Rule UnconnectedRoute = new("CFG2015", Severity.Error, "No cable path");
    private static readonly Rule UnsuitedDevice = new("CFG2016", Severity.Error, "Device of the wrong kind");
    private static readonly Rule BadNotes = new("CFG2018", Severity.Error, "Notes that reach no document");
    private static readonly Rule StepLess = new("CFG2025", Severity.Error, "Sanitation note without its step");
    private static readonly Rule BadSetting = new("CFG2019", Severity.Error, "Value does not fit the parameter");
    private static readonly Rule BadQuantity = new("CFG2020", Severity.Error, "Quantity not possible");

    public static ImmutableArray<Rule> All { get; } =
    [
        UnknownKind,
        WrongPlace,
        UnknownName,
        UnknownKey,
        MissingKey,
        WrongForm,
        MalformedId,
        TakenName,
        OtherFile,
        NoUnit,
        WrongUnit,
        UnknownWord,
        OutOfRange,
        NotOffered,
        UnconnectedRoute,
        UnsuitedDevice,
        UnknownLanguage,
        BadNotes,
        StepLess,
        BadSetting,
        BadQuantity,
    ];

    public static Diagnostic KindUnknown(ScalarSyntax key, IEnumerable<string> kinds)
    {
        var nearest = Nearest.To(key.Text, kinds);
        return new(UnknownKind, $"a definition cannot start with `{key.Text}`", key.Span)
        {
            Fix = nearest is null
                ? new($"start with one of {string.Join(", ", kinds.Select(kind => $"`{kind}`"))}")
                : new($"replace it with `{nearest}`", key.Span, nearest),
        };
    }

    public static Diagnostic PlaceWrong(string kind, string place, SourceSpan span) =>
        new(WrongPlace, $"a definition of kind `{kind}` does not belong here", span)
        {
            Fix = new($"move the file to `{place}`"),
        };

    public static Diagnostic IdNotFileName(Located<string> id, string expected, string fileOrFolder) =>
        new(OtherFile, $"the id `{id.Value}` differs from the name `{expected}` of its {fileOrFolder}", id.Span)
        {
            Fix = new($"replace it with `{expected}`, or rename", id.Span, expected),
        };

    public static Diagnostic NotFound(string noun, Located<string> name, IEnumerable<string> known)
    {
        var nearest = Nearest.To(name.Value, known);
        return new(UnknownName, $"there is no {noun} `{name.Value}`", name.Span)
        {
            Fix = nearest is null
                ? new($"define it, or name another {noun}")
                : new($"replace it with `{nearest}`", name.Span, nearest),
        };
    }

    public static Diagnostic PortNotFound(SourceSpan span, string carrier, int port, IEnumerable<int> ports) =>
        new(UnknownName, FormattableString.Invariant($"there is no port {port} on `{carrier}`"), span)
        {
            Fix = new($"use one of its ports {string.Join(", ", ports)}"),
        };

    public static Diagnostic Taken(string noun, Located<string> name, SourceSpan first) =>
        new(TakenName, $"the {noun} `{name.Value}` is already taken", name.Span)
        {
            Notes = [new("it is taken here", first)],
            Fix = new("choose another name"),
        };

    public static Diagnostic OptionNotOffered(Located<string> option, string machine) =>
        new(NotOffered, $"option `{option.Value}` is not offered on `{machine}`", option.Span)
        {
            Fix = new($"add `{machine}` to its `offered-on`, or leave it out here"),
        };

    public static Diagnostic NoPath(string what, string from, string to, SourceSpan span) =>
        new(UnconnectedRoute, $"no cable path leads from {what} `{from}` to the control box at node `{to}`", span)
        {
            Fix = new("add the missing edge to the route"),
        };

    public static Diagnostic DeviceUnsuited(Located<string> device, string asWhat, string because) =>
        new(UnsuitedDevice, $"device `{device.Value}` cannot be {asWhat}: {because}", device.Span)
        {
            Fix = new("name another device, or complete its definition"),
        };

    public static Diagnostic NotesWithoutOwner(string path, string what) =>
        new(BadNotes, $"there is no {what} beside these notes", SourceSpan.FileStart(path))
        {
            Fix = new("rename the file after its definition, or delete it"),
        };

    public static Diagnostic NoteHeadingUnknown(Located<string> heading, IEnumerable<string> known)
    {
        var nearest = Nearest.To(heading.Value, known);
        return new(BadNotes, $"no document takes a section `{heading.Value}`", heading.Span)
        {
            Fix = nearest is null
                ? new($"use one of {string.Join(", ", known.Select(word => $"`{word}`"))}")
                : new($"replace it with `{nearest}`", heading.Span, nearest),
        };
    }

    public static Diagnostic NoteTextWithoutHeading(string path, int line) =>
        new(BadNotes, "text before the first heading appears in no document", new(path, line, 1, 0))
        {
            Fix = new("put it under a heading such as `## Sales`"),
        };

    public static Diagnostic SanitationWithoutStep(string path, int line) =>
        new(StepLess, "a crew cannot tell when this is to be done", new(path, line, 1, 0))
        {
            Fix = new("put it under a heading that names its step, such as `### Run out` or `### Foam and scrub`"),
        };

    public static Diagnostic SettingWrong(Located<string> value, string parameter, string wanted) =>
        new(BadSetting, $"`{value.Value}` does not fit the parameter `{parameter}`", value.Span)
        {
            Fix = new($"write {wanted}"),
        };

    public static Diagnostic QuantityImpossible(Located<string> option, string why, string fix) =>
        new(BadQuantity, $"option `{option.Value}` {why}", option.Span) { Fix = new(fix) };
}
