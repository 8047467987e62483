namespace Configurator.Benchmarks.Examples;

/// <summary>Captured exchanges and check octets.</summary>
internal static class MessageExamples
{
    public static void Run(Given given, Answer answer)
    {
        var master = given.Octets("master", "request", "master_message");
        var device = given.Octets("device", "reply", "response", "device_message");
        if (master is { Length: > 1 } || device is { Length: > 1 })
        {
            answer.Say(IsSound(master, 1) && IsSound(device, (device?.Length ?? 1) - 1), "checksums_valid", "checksum_ok", "valid", "ok");
            if (master is { Length: > 1 })
            {
                answer.Say(IoLinkMessages.Meaning(master, device is { Length: > 0 } ? device : [0]), "meaning");
                answer.Add(Kind.Plain, master[0] & 31, "address");
                answer.Say((master[0] & 0x80) != 0 ? "read" : "write", "direction", "access");
            }
        }

        if (given.Octets("message", "frame", "telegram") is { Length: > 1 } whole)
        {
            answer.Say(IsSound(whole, 1) || IsSound(whole, whole.Length - 1), "checksums_valid", "checksum_ok", "valid", "ok");
        }

        if (given.Octets("octets_before_check_octet", "octets", "message", "before", "data", "frame") is { Length: > 0 } octets)
        {
            var check = IoLinkMessages.CheckOctet(octets, given.Octets("flags", "check_octet_flags", "flag") is [var flags] ? flags : (byte)0);
            answer.Say($"0x{check:X2}", "check_octet", "check_octet_result", "check", "checksum", "ck", "ckt", "cks");
            answer.Say($"0x{check & 63:X2}", "checksum6", "checksum_6");
        }
    }

    private static bool IsSound(byte[]? message, int checkAt) => message is null || (message.Length > checkAt && IoLinkMessages.IsSound(message, checkAt));
}
