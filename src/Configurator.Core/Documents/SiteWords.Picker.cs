namespace Configurator.Core.Documents;

/// <summary>The page that picks an order.</summary>
public sealed partial record SiteWords
{
    public string PickerTitle => Say("pick an order", "componer un pedido");

    public string PickAnOrder => Say("Pick an order", "Componer un pedido");

    public string PickAnOrderText =>
        Say(
            "Works offline: what goes together, why not, and the nearest order that works",
            "Funciona sin conexión: qué se combina, por qué no, y el pedido más cercano que funciona"
        );

    public string PickerLead(string configurations) =>
        Say(
            $"Everything that can be ordered of this machine, and what goes together. Configurations that can be ordered: {configurations}.",
            $"Todo lo que se puede pedir de esta máquina, y qué se combina. Configuraciones que se pueden pedir: {configurations}."
        );

    public string YourOrder => Say("Your order", "Su pedido");

    public string PickerNeedsScripts =>
        Say(
            "With scripts switched on, options can be picked on this page and their rules are proved at once. The lists are complete without.",
            "Con scripts activados, en esta página se eligen opciones y sus reglas se demuestran al momento. Las listas están completas sin ellos."
        );

    public string SideBySide => Say("Side by side", "Lado a lado");

    public string PublishedBelow =>
        Say(
            "With scripts switched on, an order can be compared with these.",
            "Con scripts activados, un pedido se puede comparar con estas."
        );

    public string CheckedSet => Say("Checked set", "Conjunto comprobado");

    public string CheckedSetLead(int passed, int engineered) =>
        Say(
            $"The checked set holds every two options in every way that the rules allow. Engineered: {engineered}; without failed findings, and listed here: {passed}. Two options seldom act on each other by way of a third, but they can: an order that is not listed is allowed, not checked.",
            $"El conjunto comprobado contiene cada dos opciones de todas las formas que permiten las reglas. Calculadas: {engineered}; sin resultados fallidos, y en esta lista: {passed}. Dos opciones rara vez se afectan a través de una tercera, pero es posible: un pedido que no figura está permitido, no comprobado."
        );

    public string Details => Say("Details", "Detalles");

    public string NotReleased => Say("not released", "no liberada");

    public string ReleasedForSale => Say("released", "liberada");

    public string ReleasedOnlyFor(string markets) =>
        Say($"released for {markets} only", $"liberada solo para {markets}");
}
