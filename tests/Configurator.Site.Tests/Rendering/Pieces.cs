using CsCheck;

namespace Configurator.Site.Tests.Rendering;

/// <summary>Texts put together at random from telling pieces.</summary>
internal static class Pieces
{
    public static Gen<string> OneOf(params string[] pieces) => Gen.Int[0, pieces.Length - 1].Select(i => pieces[i]);

    public static Gen<string> Text(int countMax, params string[] pieces) => Text("", countMax, pieces);

    public static Gen<string> Text(string before, int countMax, params string[] pieces) =>
        OneOf(pieces).Array[0, countMax].Select(drawn => before + string.Concat(drawn));
}
