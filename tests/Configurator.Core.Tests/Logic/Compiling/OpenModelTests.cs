using System.Security.Cryptography;
using Configurator.Core.Logic.Compiling;

namespace Configurator.Core.Tests.Logic.Compiling;

// Source of every expected number: tests/Data/option-models/counts.csv; its README names where each was published.
[Trait("Data", "option-models")]
public class OpenModelTests
{
    public static TheoryData<string> Small { get; } =
    [
        "berkeleydb-c.cnf",
        "jhipster.cnf",
        "javagc.cnf",
        "toybox.cnf",
        "fiasco.cnf",
        "financial-services01.cnf",
        "uclinux.cnf",
        "ecos-icse11.cnf",
        "busybox-1.18.0.cnf",
    ];

    public static TheoryData<string> Large { get; } = ["automotive01.cnf", "automotive02-v4.cnf.gz"];

    [Theory]
    [MemberData(nameof(Small))]
    public void The_published_numbers_of_solutions_core_and_dead_options_are_found(string file) => Check(file);

    [Trait("Length", "nightly")]
    [Theory(Explicit = true)]
    [Trait("Nightly", "1")]
    [MemberData(nameof(Large))]
    public void The_published_numbers_of_large_models_are_found(string file) => Check(file);

    [Theory]
    [MemberData(nameof(Small))]
    [MemberData(nameof(Large))]
    public void A_model_is_the_one_its_numbers_were_published_for(string file)
    {
        var model = OpenModel.Of(file);
        var formula = model.Formula;
        Assert.Equal(model.Sha256, Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(model.Path))));
        Assert.Equal((model.Variables, model.Clauses), (formula.Sizes.Length, formula.Clauses.Length));
    }

    private static void Check(string file)
    {
        var model = OpenModel.Of(file);
        var diagram = DiagramCompiler.Compile(model.Formula, CompileLimits.None)!;
        Shape.IsSound(diagram);
        Assert.Equal(model.Count, Counting.Count(diagram));
        Assert.Equal((model.Core, model.Dead), Reaching.CoreAndDead(diagram));
    }
}
