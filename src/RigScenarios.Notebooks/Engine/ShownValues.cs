using System.Collections;
using System.Globalization;
using RigScenarios.Charts;
using RigScenarios.Charts.Pages;
using UnitsNet;

namespace RigScenarios.Notebooks.Engine;

/// <summary>How values are shown when a cell ends with one: what the library knows, and what a notebook registered.</summary>
internal sealed class ShownValues
{
    private readonly List<(Type Type, Func<object, IEnumerable<PagePart>> Parts)> registered = [];

    public void Register<T>(Func<T, IEnumerable<PagePart>> parts) => registered.Add((typeof(T), value => parts((T)value)));

    /// <summary>The parts of a page that show a value.</summary>
    public IEnumerable<PagePart> Parts(object value)
    {
        if (registered.FindLast(item => item.Type.IsInstanceOfType(value)) is { Parts: { } own })
            return own(value);
        return value switch
        {
            PagePart part => [part],
            IQuantity quantity => Printed(TradeUnits.Text(quantity)),
            double number => Printed(Rounding.Text(number, 6)),
            bool yes => Printed(yes ? "true" : "false"),
            string text => Printed(text),
            IEnumerable many and not IDictionary when LibraryValues.Parts(value) is null =>
                Printed(string.Join(", ", many.Cast<object?>().Take(1000).Select(Text))),
            _ => LibraryValues.Parts(value) ?? Printed(Text(value)),
        };
    }

    private static string Text(object? value) => value switch
    {
        null => "",
        IQuantity quantity => TradeUnits.Text(quantity),
        double number => Rounding.Text(number, 6),
        IFormattable formattable => formattable.ToString(null, CultureInfo.InvariantCulture),
        _ => value.ToString() ?? "",
    };

    private static IEnumerable<PagePart> Printed(string text) => text.Length == 0 ? [] : [new PrintedPart(text)];
}
