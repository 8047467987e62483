using Configurator.Core.Engineering;
using Configurator.Core.Model;

namespace Configurator.Core.Review;

/// <summary>A published configuration on both sides.</summary>
internal sealed record ConfigurationPair(EngineeredConfiguration Before, EngineeredConfiguration After)
{
    public ConfigurationId Id => After.Published.Id.Value;

    public MachineId Machine => After.Machine.Id.Value;
}
