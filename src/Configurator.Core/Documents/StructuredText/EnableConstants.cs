using Configurator.Core.Engineering;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.StructuredText;

/// <summary>The constants that tell a machine's one program which order it runs.</summary>
internal static class EnableConstants
{
    public static TextFile File(DocumentContext context, EngineeredConfiguration configuration)
    {
        var published = configuration.Published;
        var control = context.Control(published, ControllerSuffix);
        var text = new Declarations()
            .Comment(
                $"{control.Number} revision {control.Revision}, {(published.Released is null ? "draft" : "released")}: {published.Id.Value}."
            )
            .Comment(Declarations.Of(context.Definitions))
            .Comment(
                "Load only with the machine locked and its actuator supplies off: a changed constant changes what may move."
            )
            .Line(0, "VAR_GLOBAL CONSTANT");
        foreach (var option in configuration.Machine.Options.Values)
        {
            var count = Count(configuration, option);
            text.Member(1, Tags.Enable(option.Id.Value), $"BOOL := {Value(count > 0)}", "");
            if (option.Quantity is not null)
            {
                text.Member(1, Tags.Count(option.Id.Value), FormattableString.Invariant($"INT := {count}"), "");
            }
        }

        return new(PagePaths.EnableConstants(published), text.Line(0, "END_VAR").ToString());
    }

    public const string ControllerSuffix = "IO";

    public static int Count(EngineeredConfiguration configuration, Option option) =>
        configuration.Proved.Configuration.QuantityOf(option.Id.Value);

    public static string Value(bool isTrue) => isTrue ? "TRUE" : "FALSE";
}
