using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Hygiene;

/// <summary>Words of hygiene in findings.</summary>
internal static class HygieneWords
{
    public static string Of(Area area, WashMethod wash) => $"{Of(area.Class)}, {Of(wash)}";

    public static string Of(WashMethod wash) =>
        wash switch
        {
            WashMethod.Dry => "dry clean",
            WashMethod.Rinse => "low-pressure rinse",
            WashMethod.Foam => "foam with boosted rinse",
            _ => "hot high-pressure",
        };

    public static string Of(AreaClass area) =>
        area switch
        {
            AreaClass.Food => "food",
            AreaClass.Splash => "splash",
            _ => "non-food",
        };

    public static string Of(Shown shown) =>
        shown switch
        {
            Shown.No => "it shows nothing of",
            Shown.Unstated => "it leaves unstated",
            _ => "a near test of another standard; compare the test data for",
        };

    public static string Of(CleaningStep step) => Binding.Shapes.Kebab.FromPascal(step.ToString());

    public static string Of(Rating rating) =>
        rating switch
        {
            Rating.Good => "good",
            Rating.Limited => "limited",
            _ => "avoid",
        };

    public static string Of(Basis basis) =>
        basis switch
        {
            Basis.Corroborated => "corroborated",
            Basis.CommonPractice => "common practice",
            _ => "from memory",
        };

    public static Verdict Verdict(Shown shown) =>
        shown switch
        {
            Shown.Yes => Engineering.Verdict.Pass,
            Shown.No => Engineering.Verdict.Fail,
            Shown.Unstated => Engineering.Verdict.Unstated,
            _ => Engineering.Verdict.Review,
        };
}
