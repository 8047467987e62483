namespace Configurator.Core.Documents;

/// <summary>What holds for every configuration of a machine.</summary>
public sealed partial record SiteWords
{
    public string AllOrders => Say("What holds for every order", "Lo que vale para cada pedido");

    public string ClosestToLimits => Say("Closest to each limit", "Lo más cercano a cada límite");

    public string With => Say("In the configuration with", "En la configuración con");

    public string Proof => Say("Proof", "Demostración");

    public string Proved => Say("no other does worse", "ninguna otra es peor");

    public string NotProved => Say("not proved", "sin demostrar");

    public string PortUsed => Say("Used, of configurations", "Usado, de configuraciones");

    public string Fitted => Say("Fitted", "Montado");

    /// <param name="configurations">Null where they are not counted.</param>
    public string HoldsForAll(string? configurations) =>
        Say(
            $"With every fit at its home, {(configurations is null ? "all" : $"all {configurations}")} configurations were checked by their worst case, published or not: each check below holds in every one of them. The table shows the result that comes closest to each limit.",
            $"Con cada montaje en su puerto, se comprobaron {(configurations is null ? "todas las" : $"las {configurations}")} configuraciones por su caso extremo, publicadas o no: cada control de abajo se cumple en todas. La tabla muestra el resultado más cercano a cada límite."
        );

    /// <param name="configurations">Null where they are not counted.</param>
    public string DoesNotHoldForAll(string? configurations, int failed) =>
        Say(
            $"With every fit at its home, {(configurations is null ? "all" : $"all {configurations}")} configurations were checked by their worst case, published or not: {failed} {(failed == 1 ? "check fails" : "checks fail")} in some of them. The table shows the result that comes closest to each limit or goes furthest beyond.",
            $"Con cada montaje en su puerto, se comprobaron {(configurations is null ? "todas las" : $"las {configurations}")} configuraciones por su caso extremo, publicadas o no: {failed} {(failed == 1 ? "control falla" : "controles fallan")} en algunas. La tabla muestra el resultado más cercano a cada límite o el que más lo supera."
        );

    /// <param name="byMix">Null where no order mix is declared.</param>
    public string FittedIn(string configurations, string? byMix) =>
        byMix is null
            ? Say(
                $"in {configurations} of configurations, not of sales",
                $"en {configurations} de las configuraciones, no de las ventas"
            )
            : Say(
                $"in {byMix} of orders by the declared mix, in {configurations} of configurations",
                $"en {byMix} de los pedidos según la mezcla declarada, en {configurations} de las configuraciones"
            );
}
