namespace Configurator.Planning;

/// <summary>Comments of a port plan: those before its first part, those at its lines, those at its end.</summary>
internal sealed record PlanComments(
    List<string> Head,
    Dictionary<(string Section, string Key), (List<string> Above, string Behind)> Lines,
    List<string> Tail
)
{
    private static readonly string[] Sections = ["homes", "box"];

    public (List<string> Above, string Behind) On(string section, string key) =>
        Lines.GetValueOrDefault((section, key), ([], ""));

    public static PlanComments Of(string old, string modeline)
    {
        var comments = new PlanComments([], [], []);
        var above = new List<string>();
        var section = "";
        foreach (var line in old.Split('\n').Select(line => line.TrimEnd('\r')).Where(line => line != modeline))
        {
            var trimmed = line.TrimStart();
            if (trimmed.StartsWith('#'))
            {
                (section.Length > 0 ? above : comments.Head).Add(line);
            }
            else if (!char.IsWhiteSpace(line.FirstOrDefault('x')))
            {
                section = SectionOf(line) ?? section;
            }
            else if (trimmed.IndexOf(':', StringComparison.Ordinal) is var colon and > 0)
            {
                comments.Lines[(section, trimmed[..colon].Trim('"', '\''))] = (above, Behind(line));
                above = [];
            }
        }

        comments.Tail.AddRange(above);
        return comments;
    }

    private static string? SectionOf(string line) =>
        Sections.FirstOrDefault(name => line.StartsWith($"{name}:", StringComparison.Ordinal));

    private static string Behind(string line)
    {
        var hash = line.IndexOf(" #", StringComparison.Ordinal);
        return hash < 0 ? "" : "  " + line[hash..].TrimStart();
    }
}
