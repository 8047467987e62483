using Configurator.Core.Documents;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Documents;

/// <summary>What makes a page a controlled document.</summary>
public class ControlTests
{
    private const string Machine = "machines/tray-one/machine.yaml";

    [Fact]
    public void An_accepted_deviation_stands_on_every_document_of_a_configuration_that_has_it()
    {
        var catalogue = BaseCatalogue.Whole.Replacing(Machine, "spare-ports: 1", "spare-ports: 6");
        var pages = Controlled(catalogue.And(
            Machine,
            catalogue.TextOf(Machine) + "accepted:\n  - {finding: ports.spare/main, by: controls lead, because: A test bench, until: 2027-03-31}\n"));
        Assert.NotEmpty(pages);
        Assert.All(pages, page => Assert.Contains(
            $"{page.Words.Accepted}: A test bench (controls lead, {page.Words.AcceptedUntil} 2027-03-31)",
            Assert.Single(page.Control!.Deviations),
            StringComparison.Ordinal));
    }

    [Fact]
    public void A_configuration_without_deviations_prints_none() =>
        Assert.All(Controlled(BaseCatalogue.Whole), page => Assert.Empty(page.Control!.Deviations));

    [Fact]
    public void Every_document_says_how_it_came_to_its_revision() => Assert.All(
        DemoCatalogue.Documents.Sets,
        set => Assert.All(
            set.Pages.Where(page => page.Kind != "configuration"),
            page => Assert.Equal(
                set.Engineered.Published.History.Select(step => step.Revision), page.Control!.History.Select(line => line.Revision))));

    [Fact]
    public void The_stamp_of_a_sheet_has_number_revision_state_approver_and_definitions()
    {
        var words = new SiteWords("en");
        Assert.Equal(
            "P4-101-WT | Revision B | released: controls lead, 2026-08-28 | Definitions: 1a2b3c",
            new DocumentControl("P4-101-WT", "B", "released", "controls lead, 2026-08-28", "1a2b3c").Stamp(words));
        Assert.Equal(
            "P4-101-WT | Revision A | draft | Definitions: not stated",
            new DocumentControl("P4-101-WT", "A", "draft", "", "not stated").Stamp(words));
    }

    private static List<Page> Controlled(BaseCatalogue catalogue) =>
        [.. Documenter.Compose(catalogue.Check().Value, "").Value.Pages.Where(page => page.Control is not null)];
}
