using Configurator.Core.Model;

namespace Configurator.Core.Tests.Model;

public class NameTests
{
    [Theory]
    [InlineData("standard/guard/1")]
    [InlineData("cup-check/cup-eye/12")]
    public void An_instance_is_named_by_its_source_its_fit_and_its_number(string text) =>
        Assert.Equal(text, InstanceKey.Parse(text)!.Value.ToString());

    [Theory]
    [InlineData("guard/1")]
    [InlineData("standard/guard/0")]
    [InlineData("standard/guard/-1")]
    [InlineData("standard/guard/+1")]
    [InlineData("standard/guard/x")]
    [InlineData("standard/guard/99999999999")]
    [InlineData("/guard/1")]
    [InlineData("a/b/c/1")]
    public void Anything_else_names_no_instance(string text) => Assert.Null(InstanceKey.Parse(text));

    [Fact]
    public void Instances_are_sorted_by_number_and_not_by_its_digits() => Assert.Equal(
        ["a/x/2", "a/x/10", "a/y/1", "b/a/1"],
        "b/a/1 a/x/10 a/y/1 a/x/2".Split(' ').Select(text => InstanceKey.Parse(text)!.Value).Order().Select(key => key.ToString()));

    [Theory]
    [InlineData("direct", true)]
    [InlineData("front:3", false)]
    public void A_home_is_a_port_or_the_box(string text, bool isDirect)
    {
        var home = Home.Parse(text)!.Value;
        Assert.Equal((text, isDirect), (home.ToString(), home.IsDirect));
    }

    [Theory]
    [InlineData("front")]
    [InlineData(":3")]
    [InlineData("front:")]
    [InlineData("front:x")]
    [InlineData("front:-1")]
    [InlineData("front:99999999999")]
    [InlineData("Direct")]
    public void Anything_else_is_no_home(string text) => Assert.Null(Home.Parse(text));

    [Fact]
    public void A_text_is_read_in_its_language_or_in_english_or_in_the_first_it_has()
    {
        var both = Text.Of([new("es", "Sensor de tapa"), new("en", "Lid sensor")]);
        Assert.Equal(("Sensor de tapa", "Lid sensor", "Lid sensor"), (both.In("es"), both.In("en"), both.In("de")));
        Assert.Equal("Sensor", Text.Of([new("es", "Sensor")]).In("en"));
        Assert.Equal("Lid", Text.Of("Lid").In("es"));
    }

    [Fact]
    public void Notes_on_a_subject_that_a_language_lacks_come_in_english()
    {
        var notes = new NoteSet([Note(NoteSubject.Sales, "en"), Note(NoteSubject.Sales, "es"), Note(NoteSubject.Wiring, "en")]);
        Assert.Equal(["es"], notes.On(NoteSubject.Sales, "es").Select(note => note.Language));
        Assert.Equal(["en"], notes.On(NoteSubject.Wiring, "es").Select(note => note.Language));
        Assert.Empty(notes.On(NoteSubject.Service, "es"));
    }

    [Fact]
    public void An_option_is_ordered_once_or_as_often_as_its_quantity_says()
    {
        var order = Order.Of(new("cup-one"), [new("film"), new("heads")], [new(new("heads"), 2), new(new("lanes"), 3)]);
        Assert.Equal(["film 1", "heads 2", "lanes 3"], order.Picks.Select(pick => $"{pick.Key} {pick.Value}"));
    }

    private static NoteSection Note(NoteSubject subject, string language) => new(subject, null, language, "x\n", default);
}
