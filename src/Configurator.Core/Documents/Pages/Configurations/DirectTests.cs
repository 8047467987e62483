using System.Collections.Immutable;
using Configurator.Core.Documents.Cables;
using Configurator.Core.Engineering.Signals;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>Tests of signals that go straight to inputs of the box, and of devices with a network cable of their
/// own.</summary>
/// <remarks>Source: IEC 60204-1 clause 18.6 (functional tests), from memory.</remarks>
internal static class DirectTests
{
    public static ImmutableArray<AcceptanceTest> Of(ConfigurationContext context)
    {
        var (words, ways) = (context.Words, new BoxWays(context));
        var direct = context.Fitted.Cabled.Select(pair => pair.Instance).ToList();
        return
        [
            .. direct
                .Where(instance => instance.Fit.Wiring == Wiring.Direct && ways.FastInput(instance).Length > 0)
                .Select(instance => new AcceptanceTest(
                    context.Names.Of(instance),
                    words.LookSwitching,
                    context.In(instance.Fit.Purpose),
                    ways.FastInput(instance)
                )),
            .. SignalList
                .Of(context.Fitted)
                .Where(signal => signal.Kind is SignalKind.BoxInput or SignalKind.BoxOutput)
                .Select(signal => new AcceptanceTest(
                    context.Names.Of(signal.Instance),
                    signal.IsInput ? words.LookInput : words.LookOutput,
                    SignalTable.Say(context, signal),
                    SignalTable.PortOf(context, signal)
                )),
            .. direct
                .Where(instance => instance.Fit.HasNetwork)
                .Select(instance => new AcceptanceTest(
                    context.Names.NetworkPortOf(instance),
                    words.LookNetwork,
                    words.NetworkExpected,
                    context.Names.NetworkSocketOf(instance)
                )),
        ];
    }
}
