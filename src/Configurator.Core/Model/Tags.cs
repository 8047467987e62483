namespace Configurator.Core.Model;

/// <summary>
/// Names in the controller program. A tag is the fit's name, the ordinal and the signal's name, joined by single
/// underscores, hyphens as underscores: <c>mark-eye</c>, 1, <c>signal</c> give <c>mark_eye_1_signal</c>. They never
/// come
/// from counting over options, so a tag is the same in every order.
/// </summary>
/// <remarks>
/// No two tags of a machine are alike: no word of a signal's name is a bare number, so the last bare number in a tag is
/// the ordinal. None is a reserved word, for none of those holds a bare number between underscores. Names are lower
/// case, since IEC 61131-3 tells no case apart.
/// </remarks>
public static class Tags
{
    /// <summary>Our limit; IEC 61131-3 leaves it to the controller (from memory).</summary>
    public const int LengthMax = 64;

    /// <summary>Each word has a letter first: what <see cref="Of"/> relies on.</summary>
    public static bool IsSignalName(string id) => id.Split('-').All(word => !char.IsAsciiDigit(word[0]));

    public static string Of(InstanceKey key, string signal) =>
        FormattableString.Invariant($"{Word(key.Fit.Value)}_{key.Ordinal}_{Word(signal)}");

    /// <summary>The constant that is true where an option is ordered.</summary>
    public static string Enable(OptionId option) => $"enable_{Word(option.Value)}";

    /// <summary>The constant that says how many of an option are ordered.</summary>
    public static string Count(OptionId option) => $"count_{Word(option.Value)}";

    /// <summary>The structure of all inputs, or of all outputs, at the ports of a master.</summary>
    public static string Structure(MasterName master, bool isInput) =>
        $"master_{Word(master.Value)}_{(isInput ? "inputs" : "outputs")}";

    public const string BoxInputs = "box_inputs";

    public const string BoxOutputs = "box_outputs";

    public const string BoxSafety = "box_safety_states";

    private static string Word(string name) => name.Replace('-', '_');
}
