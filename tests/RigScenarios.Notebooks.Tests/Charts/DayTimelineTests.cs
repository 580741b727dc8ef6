using System.Globalization;
using System.Xml.Linq;
using RigScenarios.Charts.Timeline;
using RigScenarios.Charts.Style;
using RigScenarios.Days;
using RigScenarios.Simulation;

namespace RigScenarios.Notebooks.Tests.Charts;

/// <summary>What somebody who reads the timeline with a ruler would find; read back from the SVG and held against the
/// result.</summary>
public sealed class DayTimelineTests
{
    [Theory]
    [InlineData(ChartStyle.Width)]
    [InlineData(ChartStyle.NarrowWidth)]
    public void Blocks_takes_swaps_and_spans_stand_at_their_clock_times(int width)
    {
        var result = TimelineGallery.Run(TimelineGallery.Island);
        var sheet = Sheet(TimelineGallery.Island, result, width);
        foreach (var day in result.Days)
        {
            var drawn = Day(sheet, day.Number);
            var clock = Clock(drawn);
            double X(double hours) => clock.X + ((hours - (24 * (day.Number - 1)) - clock.Hour) * clock.PerHour);

            var at = day.Start.Hours;
            foreach (var block in TimelineGallery.Island.Days[day.Number - 1].Blocks)
            {
                var boxes = drawn.Elements("g").Single(element => Is(element, "rs-block")
                    && (string?)element.Attribute("data-block") == block.Key).Elements("rect").ToList();
                Assert.Equal(X(at), Value(boxes[0], "x"), 0.1);
                Assert.Equal(block.Value.Length.Hours * clock.PerHour, Value(boxes[0], "width"), 0.1);
                // Takes by hand: one each period, the last may be cut short.
                var period = block.Value.Cycle is { } cycle ? cycle.Take.Hours + cycle.Reset.Hours : 0;
                var takes = period > 0 ? (int)Math.Ceiling((block.Value.Length.Hours / period) - 1e-9) : block.Value.Rolling
                    ? 1 : 0;
                Assert.Equal(takes, boxes.Count - 1);
                if (takes > 1)
                    Assert.Equal(X(at + period), Value(boxes[2], "x"), 0.1);
                at += block.Value.Length.Hours;
            }

            var swaps = drawn.Elements("g").Where(element => Is(element, "rs-swap")).ToList();
            Assert.Equal(result.Swaps.Count(swap => swap.Day == day.Number), swaps.Count);
            foreach (var (swap, element) in result.Swaps.Where(swap => swap.Day == day.Number).Zip(swaps))
            {
                Assert.Equal((swap.Off ?? "", swap.On),
                    ((string?)element.Attribute("data-off"), (string?)element.Attribute("data-on")));
                Assert.Equal(X(swap.Time.Hours), Start(element.Elements("path").Last()).X, 0.1);
            }
        }
    }

    [Fact]
    public void Each_battery_is_where_the_result_says_and_as_full()
    {
        var result = TimelineGallery.Run(TimelineGallery.Island);
        var sheet = Sheet(TimelineGallery.Island, result, ChartStyle.Width);
        var drawn = sheet.Descendants("g").Where(element => Is(element, "rs-span")).ToList();
        foreach (var (name, battery) in result.Batteries)
        {
            var spans = drawn.Where(element => (string?)element.Attribute("data-battery") == name).ToList();
            foreach (var place in battery.Spans.Select(span => span.Place).Distinct())
            {
                var hours = spans.Where(element => (string?)element.Attribute("data-place") == place.InWords())
                    .Sum(element => Value(element, "data-to") - Value(element, "data-from"));
                Assert.Equal(battery.Spans.Where(span => span.Place == place).Sum(span => (span.End - span.Start).Hours), hours,
                    0.01);
            }
            // Nowhere twice, and no time missing.
            for (var i = 1; i < spans.Count; i++)
                Assert.Equal(Value(spans[i - 1], "data-to"), Value(spans[i], "data-from"), 1e-3);
            // The line stands as high as the battery is full: the foot is 24 units under the top.
            foreach (var span in spans)
            {
                var line = span.Elements("path").First(path => Is(path, "rs-level")
                    || ((string?)path.Attribute("class"))!.StartsWith("rs-level ", StringComparison.Ordinal));
                var foot = Value(span.ElementsBeforeSelf("line").Last(), "y1");
                Assert.Equal(24 * Value(span, "data-charge-from") / 100, foot - Start(line).Y, 0.05);
            }
        }
    }

    [Fact]
    public void On_the_rig_and_charging_are_told_without_colour()
    {
        var sheet = Sheet(TimelineGallery.Island, TimelineGallery.Run(TimelineGallery.Island), ChartStyle.Width);
        foreach (var span in sheet.Descendants("g").Where(element => Is(element, "rs-span")))
        {
            var place = (string?)span.Attribute("data-place");
            Assert.Equal(place == "on the rig", span.Elements("polygon").Any());
            // A stretch narrower than the strokes are apart may have none.
            if (Value(span, "data-to") - Value(span, "data-from") > 0.15)
                Assert.Equal(place == "charging", span.Elements("path").Any(path => Is(path, "rs-strokes")));
            Assert.Equal(place!.StartsWith("waiting", StringComparison.Ordinal),
                span.Elements("path").Any(path => Is(path, "rs-level rs-waits")));
            Assert.Equal(place == "full", span.Elements("path").Count(path => Is(path, "rs-level")) == 2);
        }
    }

    [Fact]
    public void A_time_without_the_rig_is_struck_out_and_named()
    {
        var result = TimelineGallery.Run(TimelineGallery.Broken);
        Assert.False(result.Completes);
        var sheet = Sheet(TimelineGallery.Broken, result, ChartStyle.Width);
        var outages = sheet.Descendants("g").Where(element => Is(element, "rs-outage")).ToList();
        var downs = result.DownTimes.Where(down => !down.IsPlanned).ToList();
        Assert.Equal(downs.Sum(down => (down.End - down.Start).Hours),
            outages.Sum(element => Value(element, "data-to") - Value(element, "data-from")), 0.01);
        // One narrower than the strokes are apart has its outline alone.
        Each.Of(outages.Where(element => Value(element.Element("rect")!, "width") > 4),
            element => Assert.True(element.Elements("line").Any()));
        Each.Of(outages, element => Assert.True(element.Elements("rect").Any()));
        var words = string.Join(' ', sheet.Descendants("text").Select(text => text.Value));
        // To the nearest minute, as the sentences have it.
        var clock = TimeSpan.FromMinutes(Math.Round(downs[0].Start.Minutes) % 1440)
            .ToString(@"hh\:mm", CultureInfo.InvariantCulture);
        Assert.Contains($"A {clock} to ", words, StringComparison.Ordinal);
        Assert.Contains($"stops at {clock}", words, StringComparison.Ordinal);
        Assert.DoesNotContain(Sheet(TimelineGallery.Island, TimelineGallery.Run(TimelineGallery.Island), ChartStyle.Width)
            .Descendants("g"), element => Is(element, "rs-outage"));
    }

    [Theory]
    [InlineData(ChartStyle.Width)]
    [InlineData(ChartStyle.NarrowWidth)]
    public void No_text_in_the_rows_lies_over_another_and_none_leaves_the_sheet(int width)
    {
        var looked = new LookedAt();
        foreach (var plan in new[] { TimelineGallery.Island, TimelineGallery.Broken, TimelineGallery.Many })
        {
            var made = new TimelineSheet(new TimelinePicture(plan, TimelineGallery.Run(plan)), width);
            Assert.NotEmpty(made.Bands);
            foreach (var (_, band) in made.Bands)
            {
                var texts = band.Placed.OrderBy(text => text.Left).ToList();
                Each.Of(texts, text => Assert.True(text.Left >= 0 && text.Right <= width, text.Text), atLeast: 0);
                Each.Step(texts, (one, next) =>
                {
                    Assert.True(next.Left >= one.Right, $"{one} and {next}");
                    looked.One();
                }, atLeast: 0);
            }
        }
        looked.AtLeast(20);
    }

    [Fact]
    public void Power_is_drawn_in_its_hours_over_midnight_too()
    {
        var plan = TimelineGallery.Many with { Days = TimelineGallery.Island.Days };
        var sheet = Sheet(plan, TimelineGallery.Run(plan), ChartStyle.Width);
        // 07:15 to 08:00 by day; 22:00 to 06:00 of the night, of which the strip from the last hour of work to the first holds
        // all.
        var (first, last) = (Day(sheet, 1), Day(sheet, 3));
        var clock = Clock(first);
        var bars = first.Elements("rect").Where(element => Is(element, "rs-rest-fill")).ToList();
        Assert.Contains(bars, bar => Math.Abs(Value(bar, "x") - clock.X - ((7.25 - clock.Hour) * clock.PerHour)) < 0.1
            && Math.Abs(Value(bar, "width") - (0.75 * clock.PerHour)) < 0.1);
        Assert.Equal(3, bars.Count);
        Assert.Equal(2, last.Elements("rect").Count(element => Is(element, "rs-rest-fill")));
    }

    [Fact]
    public void No_name_becomes_markup_and_nothing_is_fetched_or_run()
    {
        const string evil = "\"><script>go()</script>'&";
        var plan = TimelineGallery.Island with
        {
            Batteries = new(TimelineGallery.Island.Batteries.Select(item => KeyValuePair.Create(item.Key + evil, item.Value))),
            Days = [TimelineGallery.Island.Days[0] with { Title = evil,
                Blocks = new(TimelineGallery.Island.Days[0].Blocks
                .Select(item => KeyValuePair.Create(item.Key + evil, item.Value with { Title = evil }))) }],
        };
        var drawing = DayTimeline.Of(plan, TimelineGallery.Run(plan));
        foreach (var svg in new[] { drawing.Svg, drawing.NarrowSvg })
        {
            Assert.Subset(new HashSet<string> { "g", "line", "polygon", "rect", "path", "text" },
                XElement.Parse(svg).Descendants().Select(element => element.Name.LocalName).ToHashSet());
            Assert.DoesNotContain("style=", svg, StringComparison.Ordinal);
            Assert.DoesNotContain("href", svg, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_words_and_the_numbers_say_the_same()
    {
        var result = TimelineGallery.Run(TimelineGallery.Island);
        var drawing = DayTimeline.Of(TimelineGallery.Island, result);
        Assert.Equal(result.Batteries.Values.Sum(battery => battery.Spans.Count), drawing.Data.Rows.Count);
        Assert.Contains("Day 3: The mail boat, 06:30 to 17:00: lasts", drawing.AlternativeText, StringComparison.Ordinal);
        Assert.Contains(drawing.Cautions, caution => caution.StartsWith("Times are predicted, not measured",
            StringComparison.Ordinal));
        Assert.Contains(drawing.Cautions, caution => caution.Contains("unattended", StringComparison.Ordinal));
        Assert.Throws<ArgumentException>(() => DayTimeline.Of(TimelineGallery.Broken, result));
    }

    [Fact]
    public void The_charge_over_the_days_is_that_of_the_spans()
    {
        var result = TimelineGallery.Run(TimelineGallery.Island);
        var lines = Domain.FigureParts.Lines(ChargeOverDay.Of(TimelineGallery.Island, result));
        Assert.Equal(4, lines.Count);
        foreach (var (line, battery) in lines.Zip(result.Batteries.Values))
        {
            var points = line["x"]!.AsArray().Zip(line["y"]!.AsArray(),
                (x, y) => (X: x!.GetValue<double>(), Y: y!.GetValue<double>())).ToList();
            foreach (var span in battery.Spans)
            {
                var nearest = points.MinBy(point => Math.Abs(point.X - span.End.Hours));
                Assert.Equal(span.ChargeAtEnd.Percent, nearest.Y, 0.5);
            }
        }
    }

    private static XElement Sheet(DayPlan plan, SimulationResult result, int width)
    {
        var drawing = DayTimeline.Of(plan, result);
        var sheet = XElement.Parse(width == ChartStyle.Width ? drawing.Svg : drawing.NarrowSvg);
        foreach (var element in sheet.DescendantsAndSelf())
            element.Name = element.Name.LocalName;
        return sheet;
    }

    private static XElement Day(XElement sheet, int number) =>
        sheet.Elements("g")
        .Single(element => (string?)element.Attribute("data-day") == number.ToString(CultureInfo.InvariantCulture));

    /// <summary>The scale from two clock times and the lines under them.</summary>
    private static (double Hour, double X, double PerHour) Clock(XElement day)
    {
        var ticks = day.Elements("line").Where(line => Is(line, "rs-grid")
            && line.Attribute("x1")!.Value == line.Attribute("x2")!.Value)
            .Zip(day.Elements("text").Where(text => text.Value.Length == 5 && text.Value[2] == ':'))
            .Select(pair => (Hour: TimeSpan.Parse(pair.Second.Value, CultureInfo.InvariantCulture).TotalHours,
                X: Value(pair.First, "x1"))).ToList();
        return (ticks[0].Hour, ticks[0].X, (ticks[^1].X - ticks[0].X) / (ticks[^1].Hour - ticks[0].Hour));
    }

    private static (double X, double Y) Start(XElement path)
    {
        var numbers = path.Attribute("d")!.Value[1..].Split(['L', 'V', ' '], 3);
        return (double.Parse(numbers[0], CultureInfo.InvariantCulture), double.Parse(numbers[1], CultureInfo.InvariantCulture));
    }

    private static bool Is(XElement element, string kind) => (string?)element.Attribute("class") == kind;

    private static double Value(XElement element, string attribute) =>
        double.Parse(element.Attribute(attribute)!.Value, CultureInfo.InvariantCulture);
}
