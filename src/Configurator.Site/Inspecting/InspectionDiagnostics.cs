using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Sources;

namespace Configurator.Site.Inspecting;

internal static class InspectionDiagnostics
{
    private const int ShownMax = 80;

    private static readonly Rule BrokenLink = new("CFG6001", Severity.Error, "Broken link");
    private static readonly Rule BrokenPlace = new("CFG6002", Severity.Error, "Link to a place that is not there");
    private static readonly Rule DuplicateId = new("CFG6003", Severity.Error, "Id used twice");
    private static readonly Rule HeadingOrder = new("CFG6004", Severity.Error, "Headings out of order");
    private static readonly Rule Table = new("CFG6005", Severity.Error, "Table that cannot be read aloud");
    private static readonly Rule LeavingRequest = new("CFG6006", Severity.Error, "Request that leaves the site");
    private static readonly Rule Blocked = new("CFG6007", Severity.Error, "Script or style that is blocked");
    private static readonly Rule Identity = new("CFG6008", Severity.Error, "Page without title or language");
    private static readonly Rule Nameless = new("CFG6009", Severity.Error, "Picture or control without a name");
    private static readonly Rule Path = new("CFG6010", Severity.Error, "Path that does not work everywhere");
    private static readonly Rule BadMarkup = new("CFG6011", Severity.Error, "Malformed page");

    internal static ImmutableArray<Rule> All { get; } =
    [
        BrokenLink,
        BrokenPlace,
        DuplicateId,
        HeadingOrder,
        Table,
        LeavingRequest,
        Blocked,
        Identity,
        Nameless,
        Path,
        BadMarkup,
    ];

    public static Diagnostic NoFile(Reference reference, string target, string? otherCase) =>
        new(BrokenLink, $"there is no file `{Shown(target)}`", reference.Span)
        {
            Fix = otherCase is null ? null : new($"write it in lower case, as the file is: `{Shown(otherCase)}`"),
        };

    public static Diagnostic LeadsNowhere(Reference reference) =>
        new(BrokenLink, "the link is empty", reference.Span) { Fix = new("name a file, or leave the link out") };

    public static Diagnostic LeavesSite(Reference reference) =>
        new(BrokenLink, $"`{Shown(reference.Written)}` leads out of the site's folder", reference.Span)
        {
            Fix = new("count the `../` against the folders that the page lies in"),
        };

    public static Diagnostic NoPlace(Reference reference, string page) =>
        new(BrokenPlace, $"`{page}` has no element with the id `{Shown(reference.Url.Fragment!)}`", reference.Span);

    public static Diagnostic NoId(string attribute, string id, SourceSpan span) =>
        new(BrokenPlace, $"`{attribute}` names the id `{Shown(id)}`, which is not on the page", span);

    public static Diagnostic SameId(string id, SourceSpan span, SourceSpan first) =>
        new(DuplicateId, $"the id `{Shown(id)}` is used twice on the page", span)
        {
            Notes = [new("first used here", first)],
        };

    public static Diagnostic NoTop(SourceSpan page) =>
        new(HeadingOrder, "the page has no `h1`", page) { Fix = new("give it one that says what the page is about") };

    public static Diagnostic SecondTop(SourceSpan span) =>
        new(HeadingOrder, "the page has a second `h1`", span) { Fix = new("make it an `h2`") };

    public static Diagnostic SkippedLevel(int level, int last, SourceSpan span) =>
        new(
            HeadingOrder,
            last == 0
                ? FormattableString.Invariant($"the page starts with an `h{level}`")
                : FormattableString.Invariant($"`h{level}` follows `h{last}`"),
            span
        )
        {
            Fix = new(FormattableString.Invariant($"make it an `h{last + 1}`")),
        };

    public static Diagnostic BadTable(string what, SourceSpan span) => new(Table, what, span);

    public static Diagnostic Outside(Reference reference) =>
        new(LeavingRequest, $"`{Shown(reference.Written)}` is fetched from outside the site", reference.Span)
        {
            Fix = new("put the file into the site's assets and link to it there"),
        };

    public static Diagnostic BadScheme(Reference reference) =>
        new(LeavingRequest, $"a link may not lead to `{Shown(reference.Written)}`", reference.Span)
        {
            Fix = new("use `https:`, `mailto:`, `tel:` or a relative path"),
        };

    public static Diagnostic Inline(string what, SourceSpan span) =>
        new(Blocked, what, span) { Fix = new("move it to the site's own script or style sheet") };

    public static Diagnostic ActiveDrawing(string element, SourceSpan span) =>
        new(Blocked, $"the drawing has `{element}` or an event handler", span)
        {
            Fix = new("keep to shapes, text and links"),
        };

    public static Diagnostic NoTitle(SourceSpan page) =>
        new(Identity, "the page has no title", page) { Fix = new("give it a `title` that no other page has") };

    public static Diagnostic NoLanguage(SourceSpan span) =>
        new(Identity, "the page does not say its language", span) { Fix = new("write `lang` on the `html` element") };

    public static Diagnostic SameTitle(Located<string> title, Located<string> first) =>
        new(Identity, $"the title `{Shown(title.Value)}` is taken", title.Span)
        {
            Notes = [new("by this page", first.Span)],
        };

    public static Diagnostic NoName(string what, SourceSpan span) => new(Nameless, what, span);

    public static Diagnostic BadPath(string path) =>
        new(
            Path,
            $"the path `{Shown(path)}` has other characters than a-z, 0-9, `.` and `-`, or a name that is reserved",
            Of(path)
        )
        {
            Fix = new("change the id or title that the name comes from"),
        };

    public static Diagnostic BadType(string path) =>
        new(Path, $"files of this type are not published: `{Shown(path)}`", Of(path))
        {
            Fix = new($"these are: {SitePath.AllowedEndings}"),
        };

    public static Diagnostic Rooted(Reference reference) =>
        new(Path, $"`{Shown(reference.Written)}` starts at the root of a server", reference.Span)
        {
            Fix = new("start at the page: `../` for each folder that it lies in"),
        };

    public static Diagnostic Folder(Reference reference) =>
        new(Path, $"`{Shown(reference.Written)}` names a folder", reference.Span)
        {
            Fix = new("name the file: `index.html`"),
        };

    public static Diagnostic Malformed(string message, SourceSpan span) =>
        new(BadMarkup, $"{char.ToLowerInvariant(message[0])}{message[1..].TrimEnd('.')}", span)
        {
            Fix = new("look at the tags just before this place"),
        };

    public static Diagnostic NotUtf8(string path) => new(BadMarkup, "the file is not UTF-8 text", Of(path));

    private static SourceSpan Of(string path) => SourceSpan.FileStart(SitePath.Shown(Shown(path)));

    /// <summary>On one line and short, whatever it is made of.</summary>
    private static string Shown(string text) =>
        string.Concat(
            (text.Length > ShownMax ? text[..ShownMax] + "…" : text).Select(character =>
                char.IsControl(character) || character == '`' ? '?' : character
            )
        );
}
