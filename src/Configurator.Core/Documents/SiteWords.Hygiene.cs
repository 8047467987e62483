namespace Configurator.Core.Documents;

/// <summary>Hygiene and sanitation.</summary>
public sealed partial record SiteWords
{
    public string VerdictUnstated => Say("not stated", "no indicado");

    public string VerdictReview => Say("to be compared", "por comparar");
}
