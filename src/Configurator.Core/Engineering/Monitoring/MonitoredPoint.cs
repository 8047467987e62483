using Configurator.Core.Engineering.Signals;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Monitoring;

/// <summary>Something that a monitoring system can read, and how often that is of use.</summary>
/// <param name="Port">The port of a master at which the device, or its hub, is plugged in.</param>
/// <param name="Name">Of a process value its tag's last part; of a parameter the standard's or the device's
/// name.</param>
/// <param name="EveryMilliseconds">The shortest useful interval; null where it is read on an occasion.</param>
public sealed record MonitoredPoint(
    FitInstance Instance,
    Home Port,
    PointKind Kind,
    string Name,
    Rational? EveryMilliseconds,
    RateReason Reason
)
{
    /// <summary>Of a process value.</summary>
    public Signal? Signal { get; init; }

    /// <summary>Of everything that is read as a parameter.</summary>
    public int? Index { get; init; }

    public int Subindex { get; init; }

    public string Type { get; init; } = "";

    public Parameter? Parameter { get; init; }

    /// <summary>What one reading takes of the port at least; null for a process value.</summary>
    public Rational? ReadingMilliseconds { get; init; }
}

public enum PointKind
{
    ProcessValue,
    Status,
    Counter,
    Identity,
    Setting,
}

/// <summary>Why reading more often is of no use.</summary>
public enum RateReason
{
    /// <summary>A value is stored once a machine cycle.</summary>
    MachineCycle,

    /// <summary>The device needs longer than a machine cycle to answer.</summary>
    Response,

    /// <summary>The machine states no cycle.</summary>
    EverySecond,

    /// <summary>A switching signal is stored when it changes.</summary>
    Change,

    /// <summary>An event tells of it; the interval is for what was missed.</summary>
    Backstop,

    /// <summary>How fast it rises counts, over hours.</summary>
    Rise,

    /// <summary>It changes only with the device or its firmware.</summary>
    Start,

    /// <summary>It changes only when it is written.</summary>
    Changeover,

    /// <summary>Says more where the status is not 0.</summary>
    StatusChange,
}
