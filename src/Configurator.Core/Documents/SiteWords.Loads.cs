namespace Configurator.Core.Documents;

/// <summary>Worst cases of loads.</summary>
public sealed partial record SiteWords
{
    public string WorstCases =>
        Say("Worst cases over all configurations", "Casos extremos de todas las configuraciones");

    public string Load => Say("Load", "Carga");

    public string Least => Say("Least", "Mínimo");

    public string Most => Say("Most", "Máximo");

    public string MostWith => Say("Most with", "Máximo con");

    public string WorstCaseScope(string configurations) =>
        Say(
            $"Proved over all {configurations} configurations that can be ordered, each load by itself, with every fit at its home of the port plan. Of several configurations with the most, one with the fewest options is named.",
            $"Demostrado para las {configurations} configuraciones que se pueden pedir, cada carga por separado, con cada montaje en su puerto del plan. De varias configuraciones con el máximo se nombra una con el menor número de opciones."
        );

    public string WorstCaseScopeUncounted =>
        Say(
            "Found by search over all configurations that can be ordered, whose number is not computed; each load by itself, with every fit at its home of the port plan. Where a value is not proved, the range in which it lies is given.",
            "Hallado por búsqueda en todas las configuraciones que se pueden pedir, cuyo número no está calculado; cada carga por separado, con cada montaje en su puerto del plan. Donde un valor no está demostrado se da el intervalo en que se encuentra."
        );
}
