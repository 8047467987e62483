using Configurator.Core.Engineering.Timing;
using Configurator.Core.Model.Units;

namespace Configurator.Benchmarks.Examples;

/// <summary>Cycle octets, the age of inputs, and parameters that travel beside the process data.</summary>
internal static class CycleExamples
{
    private static readonly string[] CycleNames = ["cycle", "min_cycle", "min_cycle_time", "t_cyc", "tcyc", "cycle_time", "t", "input", "mincycletime", "time", ""];

    public static void Run(Given given, Answer answer)
    {
        Age(given, answer);
        Exchange(given, answer);
        Length(given, answer);
        Charge(given, answer);
        if (given.Octets("octet", "code", "byte") is null && given.Number(Kind.Milliseconds, CycleNames) is { } asked)
        {
            Encode(answer, asked);
        }
    }

    private static void Encode(Answer answer, Rational asked)
    {
        var octet = CycleTime.Encode(asked);
        answer.Say(octet is { } one ? $"0x{one:X2}" : Missing.Value, "octet", "code", "min_cycle_octet");
        answer.Say(octet is not null ? "valid" : "invalid", "status", "valid");
        answer.Add(Kind.Milliseconds, octet is { } code ? CycleTime.Decode(code) : null, "cycle", "encoded", "min_cycle", "rounded");
    }

    private static void Age(Given given, Answer answer)
    {
        if (given.Number(Kind.Milliseconds, "cycle", "t_cyc", "tcyc", "cycle_time") is { } cycle
            && given.Number(Kind.Milliseconds, "t_mseq", "mseq", "t_m_sequence", "tmseq", "t_seq", "t_msg") is { } message)
        {
            var age = InputAge.Of(cycle, message);
            answer.Add(Kind.Milliseconds, age.MillisecondsMin, "t_min", "age_min", "min");
            answer.Add(Kind.Milliseconds, age.MillisecondsMax, "t_max", "age_max", "max");
            answer.Add(Kind.Milliseconds, age.Jitter, "jitter", "t_jitter");
            answer.Add(Kind.Milliseconds, cycle - message, "t_idle", "idle");
        }
    }

    private static void Exchange(Given given, Answer answer)
    {
        if (given.Whole("l_req", "lreq", "req", "request", "request_octets") is { } request
            && given.Whole("od", "od_octets") is > 0 and var each)
        {
            var response = given.Whole("l_resp", "lresp", "resp", "response", "response_octets") ?? 0;
            var cycles = Isdu.Cycles(request, response, each, given.Whole("n_wait", "wait", "nwait") ?? 0);
            answer.Add(Kind.Plain, cycles, "n", "cycles", "n_cycles");
            answer.Add(Kind.Milliseconds, given.Number(Kind.Milliseconds, CycleNames) * cycles, "t", "time", "total", "duration");
        }
    }

    private static void Length(Given given, Answer answer)
    {
        if (given.Whole("data", "data_octets", "payload") is { } data)
        {
            var index = given.Whole("index_octets", "index") is { } width && width is 1 or 2 ? width : 2;
            var hasSubindex = given.Flag("subindex", "has_subindex") ?? given.Whole("subindex", "subindex_octets") is > 0;
            answer.Add(Kind.Plain, Isdu.Length(index, hasSubindex, data), "l", "length", "total", "octets", "isdu_length");
            answer.Say(Isdu.Length(index, hasSubindex, data) is not null, "ok", "fits", "valid");
        }
    }

    private static void Charge(Given given, Answer answer)
    {
        Rational sum = given.Numbers(Kind.Amperes, "i", "currents") is { } currents && given.Numbers(Kind.Milliseconds, "t", "times") is { } times
            ? currents.Zip(times, (current, time) => current * time).Aggregate((Rational)0, (total, part) => total + part)
            : 0;
        for (var step = 1; given.Number(Kind.Amperes, FormattableString.Invariant($"i{step}")) is { } current
            && given.Number(Kind.Milliseconds, FormattableString.Invariant($"t{step}")) is { } time; step++)
        {
            sum += current * time;
        }

        if (sum > 0)
        {
            answer.Add(Kind.MilliampereSeconds, sum, "q", "charge");
            answer.Say(sum <= (given.Number(Kind.MilliampereSeconds, "q_max", "limit") ?? 70), "ok");
        }
    }
}
