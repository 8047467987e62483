using Configurator.Core.Engineering;

namespace Configurator.Core.Documents;

/// <summary>One caution: its words, and the standards that govern what it is about.</summary>
/// <param name="Standards">Titles to look up, not quotations; empty where the sentence names them.</param>
/// <param name="Basis">How sure it is that these standards govern it.</param>
internal sealed record CautionLine(
    CautionTopic Topic,
    string English,
    string Spanish,
    string Standards,
    Basis Basis
)
{
    public string In(SiteWords words) =>
        (words.Language == "es" ? Spanish : English) + (Standards.Length == 0 ? "" : $" ({Standards})");
}
