using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering.Box;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages;

/// <summary>Every input, output and port of the box that some order takes, the same in all orders.</summary>
internal static class BoxPlaces
{
    public static Table Of(DocumentContext context, Links links, Machine machine)
    {
        var words = context.Words;
        var numbers = context.Numbers.GetValueOrDefault(machine.Id.Value, BoxNumbers.None);
        var taken =
            from instance in machine.Instances
            from point in Enum.GetValues<BoxPoint>()
            from number in numbers.Of(point, instance.Key)
            orderby point, number, instance.Key
            select (point, number, instance);
        return new(
            "box-places",
            words.BoxPlaces,
            [
                new(words.BoxPlace),
                new(words.NumberSign, IsNumber: true),
                new(words.Designation),
                new(words.Device),
                new(words.Option),
                new(words.Purpose),
            ],
            [
                .. taken.Select(place =>
                    Row.Of(
                        words.Of(place.point),
                        DocumentContext.Print(place.number),
                        context.Designations.Of(place.instance),
                        links.Device(place.instance.Device),
                        links.Source(place.instance),
                        context.In(place.instance.Fit.Purpose)
                    )
                ),
            ]
        );
    }
}
