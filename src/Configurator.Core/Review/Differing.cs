namespace Configurator.Core.Review;

/// <summary>One thing as it was and as it is; null where it was not, or is not, there.</summary>
internal sealed record Differing<TKey, T>(TKey Key, T? Was, T? Now, Func<T, string> Say)
    where T : class
{
    public string Before => Was is null ? "" : Say(Was);

    public string After => Now is null ? "" : Say(Now);
}
