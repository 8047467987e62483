namespace Configurator.Core.Model;

/// <summary>One energy while washing.</summary>
/// <param name="Why">Or where it is locked; empty where nothing needs saying.</param>
public sealed record EnergyCare(Energy Energy, EnergyState State, Text Why);
