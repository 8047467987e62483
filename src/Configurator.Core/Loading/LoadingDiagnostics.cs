using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Sources;

namespace Configurator.Core.Loading;

internal static class LoadingDiagnostics
{
    private static readonly Rule NotText = new("CFG1001", Severity.Error, "Not UTF-8 text");
    private static readonly Rule TooLarge = new("CFG1002", Severity.Error, "File too large");
    private static readonly Rule Refused = new("CFG1003", Severity.Error, "File refused");
    private static readonly Rule BadYaml = new("CFG1004", Severity.Error, "YAML cannot be read");
    private static readonly Rule Anchor = new("CFG1005", Severity.Error, "Anchor or alias");
    private static readonly Rule Tag = new("CFG1006", Severity.Error, "Tag");
    private static readonly Rule Several = new("CFG1007", Severity.Error, "Several documents in one file");
    private static readonly Rule Nothing = new("CFG1008", Severity.Error, "Empty file");
    private static readonly Rule Duplicate = new("CFG1009", Severity.Error, "Duplicate key");
    private static readonly Rule TooDeep = new("CFG1010", Severity.Error, "Nested too deep");
    private static readonly Rule TooMany = new("CFG1011", Severity.Error, "Too many values");
    private static readonly Rule Merge = new("CFG1012", Severity.Error, "Merge key");
    private static readonly Rule KeyForm = new("CFG1013", Severity.Error, "Key is not a single word");
    private static readonly Rule Hidden = new("CFG1014", Severity.Error, "Invisible control character");
    private static readonly Rule NotMapping = new("CFG1015", Severity.Error, "Not a list of keys");

    public static ImmutableArray<Rule> All { get; } =
    [
        NotText,
        TooLarge,
        Refused,
        BadYaml,
        Anchor,
        Tag,
        Several,
        Nothing,
        Duplicate,
        TooDeep,
        TooMany,
        Merge,
        KeyForm,
        Hidden,
        NotMapping,
    ];

    public static Diagnostic IsNotText(string path) =>
        new(NotText, "the file is not UTF-8 text", SourceSpan.FileStart(path)) { Fix = new("save it as UTF-8") };

    public static Diagnostic IsTooLarge(string path, int bytes) =>
        new(
            TooLarge,
            FormattableString.Invariant($"the file has {bytes} bytes; {Limits.FileBytesMax} is the limit"),
            SourceSpan.FileStart(path)
        )
        {
            Fix = new("split it into several definitions"),
        };

    public static Diagnostic IsRefused(RefusedFile file) =>
        new(Refused, file.Why, SourceSpan.FileStart(file.Path)) { Fix = new(file.Fix) };

    public static Diagnostic CannotRead(string reason, SourceSpan span) =>
        new(BadYaml, reason, span)
        {
            Fix = new("check indentation, colons, quotes and brackets here and on the lines around"),
        };

    public static Diagnostic HasAnchor(string name, bool isAlias, SourceSpan span) =>
        new(
            Anchor,
            $"{(isAlias ? "alias" : "anchor")} `{name}`: a reviewer must see every value where it applies",
            span
        )
        {
            Fix = new("write the value out"),
        };

    public static Diagnostic HasTag(string tag, SourceSpan span) =>
        new(Tag, $"tag `{tag}`: values get their type from their key", span) { Fix = new("remove the tag") };

    public static Diagnostic HasSeveral(SourceSpan span) =>
        new(Several, "a second document starts here; a file holds one", span)
        {
            Fix = new("move it to a file of its own"),
        };

    public static Diagnostic IsEmpty(string path) =>
        new(Nothing, "the file holds no definition", SourceSpan.FileStart(path)) { Fix = new("fill it or delete it") };

    public static Diagnostic IsDuplicate(ScalarSyntax key, SourceSpan first) =>
        new(Duplicate, $"`{key.Text}` stands twice in one place", key.Span)
        {
            Notes = [new($"`{key.Text}` is first given here", first)],
            Fix = new("keep one of the two"),
        };

    public static Diagnostic IsTooDeep(SourceSpan span) =>
        new(TooDeep, FormattableString.Invariant($"more than {Limits.DepthMax} levels of nesting"), span)
        {
            Fix = new("flatten the definition"),
        };

    public static Diagnostic HasTooMany(SourceSpan span) =>
        new(TooMany, FormattableString.Invariant($"more than {Limits.NodesMax} values in one file"), span)
        {
            Fix = new("split it into several definitions"),
        };

    public static Diagnostic HasMergeKey(SourceSpan span) =>
        new(Merge, "merge key `<<`: a reviewer must see every value where it applies", span)
        {
            Fix = new("write the values out"),
        };

    public static Diagnostic HasBadKey(SourceSpan span) =>
        new(KeyForm, "a key must be a single word or number", span) { Fix = new("write `key: value`") };

    public static Diagnostic HasControl(int code, SourceSpan span) =>
        new(Hidden, FormattableString.Invariant($"character U+{code:X4} cannot be seen and is not allowed"), span)
        {
            Fix = new("delete it"),
        };

    public static Diagnostic IsNotMapping(SourceSpan span) =>
        new(NotMapping, "a definition starts with its kind, such as `option: lid-mark-sensor`", span)
        {
            Fix = new("write `KIND: ID` on the first line, then one key a line"),
        };
}
