namespace Configurator.Core.Logic;

/// <summary>The rules of a machine are more than can be proved with a bounded amount of work.</summary>
internal sealed class TooEntangledException : Exception;
