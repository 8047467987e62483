namespace Configurator.Cli;

/// <summary>What the program's exit says to a script.</summary>
internal static class ExitCodes
{
    public const int Fine = 0;
    public const int Findings = 1;
    public const int Usage = 2;
    public const int Environment = 3;
    public const int OurBug = 70;
    public const int Cancelled = 130;
}
