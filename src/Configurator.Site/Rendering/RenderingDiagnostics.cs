using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Sources;

namespace Configurator.Site.Rendering;

internal static class RenderingDiagnostics
{
    private static readonly Rule DoesNotCompile = new("CFG5001", Severity.Error, "Template does not compile");
    private static readonly Rule NotThere = new("CFG5002", Severity.Error, "Template missing");
    private static readonly Rule Failed = new("CFG5003", Severity.Error, "Template failed while running");
    private static readonly Rule Deep = new("CFG5004", Severity.Error, "Templates include each other without end");
    private static readonly Rule Directive = new("CFG5005", Severity.Error, "Not allowed in a template");

    internal static ImmutableArray<Rule> All { get; } = [DoesNotCompile, NotThere, Failed, Deep, Directive];

    public static Diagnostic CompileError(string message, string id, SourceSpan span) =>
        new(DoesNotCompile, $"{CompilerWords.Plain(message)} ({id})", span);

    public static Diagnostic Missing(string key, SourceSpan span) =>
        new(NotThere, $"there is no template `{key}`", span)
        {
            Fix = new(
                TemplateKey.IsSound(key)
                    ? $"add `{TemplateKey.PathOf(key)}` or name an existing template"
                    : $"name a template by its path below `site-templates`, ending in `{TemplateKey.Ending}`"
            ),
        };

    public static Diagnostic Threw(string key, Exception exception, SourceSpan span) =>
        new(Failed, $"`{key}` failed: {OneLine(exception.Message)}", span)
        {
            Fix = new("let the page record say whether a value is there, and ask it before use"),
        };

    public static Diagnostic WrongModel(string key, Type wanted, Type? given) =>
        new(
            Failed,
            $"`{key}` formats `{NameOf(wanted)}` but was given {(given is null ? "nothing" : $"`{NameOf(given)}`")}",
            SourceSpan.FileStart(TemplateKey.PathOf(key))
        )
        {
            Fix = new("make the `@model` line and what the template is called with agree"),
        };

    public static Diagnostic TooDeep(string key, int levels, SourceSpan span) =>
        new(Deep, FormattableString.Invariant($"`{key}` is included {levels} levels deep and still includes"), span)
        {
            Fix = new("make sure that a template does not lead back to itself"),
        };

    public static Diagnostic LayoutCycle(string key, SourceSpan span) =>
        new(Deep, $"the layouts of `{key}` lead back to themselves", span)
        {
            Fix = new("leave the outermost layout without a `Layout`"),
        };

    public static Diagnostic NotAllowed(string used, SourceSpan span) =>
        new(Directive, $"`{used}` is not allowed in a template", span)
        {
            Fix = new("write plain HTML, and `@await IncludeAsync(\"KEY\", model)` for shared parts"),
        };

    /// <summary>The same, with the page that was being made when it showed.</summary>
    public static Diagnostic While(string page, Diagnostic diagnostic) =>
        diagnostic with
        {
            Notes = [.. diagnostic.Notes, new($"seen while making `{page}`", diagnostic.Span)],
        };

    private static string NameOf(Type type) =>
        type.IsGenericType
            ? $"{type.Name.Split('`')[0]}<{string.Join(", ", type.GetGenericArguments().Select(NameOf))}>"
            : type.Name;

    private static string OneLine(string message) => message.ReplaceLineEndings(" ").TrimEnd('.', ' ');
}
