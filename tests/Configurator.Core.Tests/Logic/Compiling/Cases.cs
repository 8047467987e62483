using CsCheck;

namespace Configurator.Core.Tests.Logic.Compiling;

/// <summary>Runs a check on many generated values, the same ones each time and on every machine.</summary>
internal static class Cases
{
    /// <summary>Once something has failed, so many more values are tried for one that says it in fewer words.</summary>
    private const int MoreAfterFailure = 300;

    private const ulong Spread = 0x9E3779B97F4A7C15UL;

    /// <param name="stream">Makes the values of one test other ones than those of the next.</param>
    /// <param name="words">Describes a value; of those that fail, the one with the fewest words is shown.</param>
    public static void Check<T>(Gen<T> values, uint stream, int count, Action<T> check, Func<T, string> words)
    {
        (string Words, Exception Failure)? worst = null;
        for (var number = 0; number < count; number++)
        {
            var value = values.Generate(new PCG(stream, unchecked((ulong)(number + 1) * Spread)), null, out _);
            if (Failure(check, value) is not { } failure)
            {
                continue;
            }

            count = worst is null ? Math.Min(count, number + MoreAfterFailure) : count;
            var said = $"case {number}: {words(value)}";
            worst = worst is { } known && known.Words.Length <= said.Length ? known : (said, failure);
        }

        Assert.True(worst is null, $"{worst?.Words}\n{worst?.Failure}");
    }

    private static Exception? Failure<T>(Action<T> check, T value)
    {
        try
        {
            check(value);
            return null;
        }
#pragma warning disable CA1031 // Whatever goes wrong with a value is a failure to be shown with the value.
        catch (Exception failure)
#pragma warning restore CA1031
        {
            return failure;
        }
    }
}
