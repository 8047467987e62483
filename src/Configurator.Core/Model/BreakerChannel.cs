using System.Globalization;

namespace Configurator.Core.Model;

/// <summary>One channel of a breaker module of the standard machine, written <c>FIT/ORDINAL:CHANNEL</c>.</summary>
public readonly record struct BreakerChannel(FitName Fit, int Ordinal, int Number)
{
    /// <summary>Reads what its shape lets through.</summary>
    public static BreakerChannel Parse(string text)
    {
        var (slash, colon) = (text.IndexOf('/', StringComparison.Ordinal), text.IndexOf(':', StringComparison.Ordinal));
        return new(new(text[..slash]), Count(text[(slash + 1)..colon]), Count(text[(colon + 1)..]));
    }

    private static int Count(string digits) => int.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture);
}
