namespace Configurator.Core.Documents;

/// <summary>The page that says what a change of the definitions means.</summary>
public sealed partial record SiteWords
{
    public string Review => Say("Review of this change", "Revisión de este cambio");

    public string ReviewLead =>
        Say(
            "What the change of the definitions means for every order and every wire, most expensive first. Links lead to the pages before and after it.",
            "Qué significa el cambio de las definiciones para cada pedido y cada cable, lo más costoso primero. Los enlaces llevan a las páginas de antes y de después."
        );

    public string ReviewVerdict => Say("Verdict", "Veredicto");

    public string NotCompared => Say("Not compared", "Sin comparar");

    public string What => Say("What", "Qué");

    public string Before => Say("Before", "Antes");

    public string Now => Say("Now", "Ahora");

    public string InConfigurations => Say("In", "En");

    public string Remark => Say("Remark", "Observación");

    public string Level => Say("Level", "Nivel");

    public string SeePages => Say("Pages", "Páginas");

    public string PageBefore => Say("before", "antes");

    public string PageNow => Say("now", "ahora");
}
