using Configurator.Core.Documents;
using Configurator.Core.Model;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Documents.StructuredText;

/// <summary>The files for the controller program of the demonstration catalogue, every machine and configuration.</summary>
public class DemoProgramTests
{
    public static TheoryData<string> Programs =>
        [.. DemoCatalogue.Documents.TextFiles.Select(file => file.Path).Where(path => path.EndsWith(".st", StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(Programs))]
    public void Declarations_follow_the_grammar_and_are_plain_ascii(string path)
    {
        var text = TextOf(path);
        var read = DeclarationGrammar.Read(text);
        Assert.NotEmpty(read.Types.Select(type => type.Name).Concat(read.Constants.Select(constant => constant.Name)));
        Assert.All(text, c => Assert.True(c is '\n' or (>= ' ' and <= '~'), $"`{c}` is not plain"));
        Assert.EndsWith(";\n", text.Replace("END_TYPE\n", ";\n", StringComparison.Ordinal).Replace("END_VAR\n", ";\n", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Programs))]
    public void Names_are_unique_whatever_their_case_and_no_longer_than_said(string path)
    {
        var read = DeclarationGrammar.Read(TextOf(path));
        var names = read.Types.SelectMany(type => type.Members.Select(member => member.Name).Append(type.Name))
            .Concat(read.Constants.Select(constant => constant.Name)).ToList();
        Assert.Equal(names.Count, names.Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.All(names, name => Assert.InRange(name.Length, 1, Tags.LengthMax));
    }

    /// <summary>Second way: tags on the pages of all configurations against members in the one file of the machine.</summary>
    [Fact]
    public void Every_signal_of_a_configuration_is_a_member_of_its_machine()
    {
        foreach (var configuration in DemoCatalogue.Engineered.Configurations)
        {
            var members = DeclarationGrammar.Read(TextOf(PagePaths.ControllerTypes(configuration.Machine.Id.Value)))
                .Types.SelectMany(type => type.Members.Select(member => member.Name)).ToHashSet(StringComparer.Ordinal);
            var page = DemoCatalogue.Documents.Pages.Single(page => page.Path == PagePaths.Of(configuration.Published, "controller"));
            Assert.Empty(CheckTables.Column(page, "signals", 0).Except(members, StringComparer.Ordinal));
        }
    }

    [Fact]
    public void Every_option_of_a_machine_has_its_constant_in_every_configuration_and_those_ordered_are_true()
    {
        foreach (var configuration in DemoCatalogue.Engineered.Configurations)
        {
            var constants = DeclarationGrammar.Read(TextOf(PagePaths.EnableConstants(configuration.Published))).Constants;
            var enabled = constants.Where(constant => constant.Declared == "BOOL").ToDictionary(constant => constant.Name, constant => constant.Value);
            Assert.Equal(configuration.Machine.Options.Keys.Select(Tags.Enable).Order(StringComparer.Ordinal), enabled.Keys.Order(StringComparer.Ordinal));
            Assert.All(configuration.Machine.Options.Keys, option => Assert.Equal(
                configuration.Proved.Configuration.Quantities.ContainsKey(option) ? "TRUE" : "FALSE", enabled[Tags.Enable(option)]));
        }
    }

    [Fact]
    public void Words_in_comments_name_only_constants_that_there_are()
    {
        foreach (var machine in DemoCatalogue.Engineered.Catalogue.Machines.Values)
        {
            var live = DeclarationGrammar.Read(TextOf(PagePaths.ControllerTypes(machine.Id.Value))).Comments
                .Where(comment => comment.Contains("live: ", StringComparison.Ordinal))
                .SelectMany(comment => comment[(comment.IndexOf("live: ", StringComparison.Ordinal) + 6)..].Split(' ', '(', ')', '*'))
                .Where(word => word.Contains('_', StringComparison.Ordinal))
                .ToHashSet(StringComparer.Ordinal);
            var known = machine.Options.Keys.SelectMany(option => new[] { Tags.Enable(option), Tags.Count(option) });
            Assert.NotEmpty(live);
            Assert.Empty(live.Except(known, StringComparer.Ordinal));
        }
    }

    [Fact]
    public void The_same_catalogue_gives_the_same_bytes() =>
        Assert.Equal(DemoCatalogue.Documents.TextFiles, Documenter.Compose(DemoCatalogue.Engineered, "").Value.TextFiles);

    private static string TextOf(string path) => DemoCatalogue.Documents.TextFiles.Single(file => file.Path == path).Text;
}
