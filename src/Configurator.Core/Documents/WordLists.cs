using Configurator.Core.Binding.Shapes;
using Configurator.Core.Model;

namespace Configurator.Core.Documents;

/// <summary>Words of closed lists as pages print them.</summary>
internal static class WordLists
{
    public static string Of(AreaClass area, SiteWords words) =>
        (area, words.Language) switch
        {
            (AreaClass.Food, "es") => "alimento",
            (AreaClass.Splash, "es") => "salpicadura",
            (AreaClass.NonFood, "es") => "no alimento",
            (AreaClass.NonFood, _) => "non-food",
            _ => Plain(area),
        };

    public static string Of(WashMethod wash, SiteWords words) =>
        (wash, words.Language) switch
        {
            (WashMethod.Dry, "es") => "limpieza en seco",
            (WashMethod.Rinse, "es") => "enjuague a baja presión",
            (WashMethod.Foam, "es") => "espuma y enjuague reforzado",
            (WashMethod.HotHighPressure, "es") => "alta presión caliente",
            (WashMethod.Dry, _) => "dry clean",
            (WashMethod.Rinse, _) => "low-pressure rinse",
            (WashMethod.Foam, _) => "foam with boosted rinse",
            _ => "hot high-pressure",
        };

    public static string Of(Take take, SiteWords words) =>
        (take, words.Language) switch
        {
            (Take.ExactlyOne, "es") => "exactamente una",
            (Take.AtMostOne, "es") => "como máximo una",
            (Take.OneOrMore, "es") => "una o más",
            _ => Plain(take),
        };

    public static string Of(CleaningStep step, SiteWords words) =>
        (step, words.Language) switch
        {
            (CleaningStep.RunOut, "es") => "Agotar el producto",
            (CleaningStep.Flush, "es") => "Enjuagar circuitos",
            (CleaningStep.Park, "es") => "Posición de lavado",
            (CleaningStep.HeatOff, "es") => "Apagar el calor",
            (CleaningStep.GasOff, "es") => "Gas cerrado",
            (CleaningStep.Selector, "es") => "Selector",
            (CleaningStep.Access, "es") => "Acceso",
            (CleaningStep.DryCleanAndSecure, "es") => "Limpieza en seco y bloqueo",
            (CleaningStep.PreRinse, "es") => "Enjuague previo",
            (CleaningStep.FoamAndScrub, "es") => "Espuma y cepillado",
            (CleaningStep.Rinse, "es") => "Enjuague",
            (CleaningStep.Inspect, "es") => "Inspección",
            (CleaningStep.Sanitize, "es") => "Desinfección",
            (CleaningStep.DryAndRelease, "es") => "Secado y liberación",
            (CleaningStep.PreRinse, _) => "Pre-rinse",
            _ => Sentence(step),
        };

    public static string Of(BoxTouch touch, SiteWords words) =>
        (touch, words.Language) switch
        {
            (BoxTouch.Drive, "es") => "accionamiento",
            (BoxTouch.HeaterCircuit, "es") => "circuito de calefacción",
            (BoxTouch.SafetyInputs, "es") => "entradas de seguridad",
            (BoxTouch.SafetyOutputs, "es") => "salidas de seguridad",
            (BoxTouch.DirectInput, "es") => "entrada directa",
            (BoxTouch.PanelPart, "es") => "componente de armario",
            (BoxTouch.Supply, "es") => "alimentación",
            _ => Plain(touch),
        };

    public static string Of(PortClass portClass) => portClass == PortClass.Switching ? "signal" : portClass.ToString();

    /// <summary><c>HeaterCircuit</c> to <c>heater circuit</c>.</summary>
    public static string Plain<TEnum>(TEnum value)
        where TEnum : struct, Enum => Kebab.FromPascal(value.ToString()).Replace('-', ' ');

    private static string Sentence<TEnum>(TEnum value)
        where TEnum : struct, Enum
    {
        var text = Plain(value);
        return char.ToUpperInvariant(text[0]) + text[1..];
    }
}
