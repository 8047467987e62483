using System.Collections.Immutable;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Timing;

/// <summary>The way of one signal, part by part, and what it takes.</summary>
/// <param name="Missing">What nobody states, in words; where there is any, the sums say too little.</param>
public sealed record ResponseChain(ImmutableArray<ChainPart> Parts, ImmutableArray<string> Missing)
{
    /// <summary>From event to answer, in ms, at worst: every free-running part has just begun its cycle.</summary>
    public Rational Longest => Parts.Aggregate((Rational)0, (sum, part) => sum + part.Longest);

    /// <summary>How much of that varies, in ms.</summary>
    public Rational Jitter => Parts.Aggregate((Rational)0, (sum, part) => sum + part.Jitter);

    public static ResponseChain Of(Machine machine, FitInstance instance, SignalWay way)
    {
        var times = new StatedTimes(machine);
        ImmutableArray<ChainPart> parts =
        [
            Own(times, ChainStage.Device, instance.Device),
            .. way.IsDirect ? Direct(times, machine) : ByPort(times, instance, way),
        ];
        return new(parts, times.Missing);
    }

    private static ChainPart Own(StatedTimes times, ChainStage stage, Device device)
    {
        var response = times.Of(device.Response, $"`response` of `{device.Id.Value}`");
        return new(stage, response, device.ResponseJitter?.InBase ?? response);
    }

    /// <summary>A latch keeps the time of the event, so that the task's cycle does not blur the position.</summary>
    private static IEnumerable<ChainPart> Direct(StatedTimes times, Machine machine)
    {
        var latch = machine.Control.Timing.Latch?.InBase;
        yield return new(ChainStage.Input, times.Control(timing => timing.FastInput, "fast-input"), latch ?? 0);
        var task = Task(times);
        yield return latch is null ? task : task with { Jitter = 0 };
        yield return Output(times);
    }

    private static IEnumerable<ChainPart> ByPort(StatedTimes times, FitInstance instance, SignalWay way)
    {
        if (way.Hub is { } hub && hub.Key != instance.Key)
        {
            yield return Own(times, ChainStage.Hub, hub.Device);
        }

        if ((way.Hub?.Device.IoLink ?? way.Data) is { } data)
        {
            yield return Port(data);
        }

        yield return Cyclic(ChainStage.Master, times.Control(timing => timing.Master, "master"));
        yield return Cyclic(ChainStage.Network, times.Control(timing => timing.Network, "network"));
        yield return Task(times);
        yield return Output(times);
    }

    private static ChainPart Port(IoLinkData data)
    {
        var age = InputAge.Of(data.Cycle.InBase, MSequences.Of(data).MillisecondsMax(data.Rate));
        return new(ChainStage.Port, age.MillisecondsMax, age.Jitter);
    }

    private static ChainPart Cyclic(ChainStage stage, Rational cycle) => new(stage, cycle, cycle);

    /// <summary>An event just missed waits for one cycle, and the next one works on it.</summary>
    private static ChainPart Task(StatedTimes times)
    {
        var task = times.Control(timing => timing.Task, "task");
        return new(ChainStage.Task, 2 * task, task);
    }

    private static ChainPart Output(StatedTimes times) =>
        new(ChainStage.Output, times.Control(timing => timing.Output, "output"), 0);
}
