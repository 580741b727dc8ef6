using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>Parts of a drawing, moved as a reader moves them.</summary>
[Collection(InABrowser.Name)]
public sealed class MovingTests(Chromium chromium)
{
    private const string Plate = ".version-now svg.rs-wide [data-view=side] .rs-part[data-part=plate]";
    private const string Moved = "#controls .moved-list li";

    [Fact]
    public async Task A_dragged_plate_moves_the_answer_the_drawing_and_the_list()
    {
        await using var visit = await BeginAsync();
        var (answer, from, camera) = (await visit.AnswerAsync(), await AtAsync(visit.Page),
            await LeftAsync(visit.Page, "camera"));
        await DragAsync(visit.Page, -40, async () =>
        {
            // While it is held: it stands where the pointer is, what hangs on it came along, all else stood still, and the answer
            // follows.
            await Assertions.Expect(visit.Page.Locator(".version-now .rs-answer p").First).Not.ToHaveTextAsync(answer);
            Assert.Equal(camera, await LeftAsync(visit.Page, "camera"), 0.2);
        });
        await Visit.SettledAsync(visit.Page);
        var at = await AtAsync(visit.Page);
        Assert.True(at < from - 0.005, $"{from} to {at}");
        await Assertions.Expect(visit.Page.Locator(Moved)).ToHaveCountAsync(1);
        Assert.Equal((at * 1000).ToString("0.#", null), await visit.Page.Locator($"{Moved} input").InputValueAsync());
        Assert.Equal(camera, await LeftAsync(visit.Page, "camera"), 0.2);
        Assert.Null(await visit.Page.Locator(Plate).GetAttributeAsync("transform"));
        await visit.Page.WaitForFunctionAsync("() => location.href.includes('places=plate')");
        visit.AssertQuiet();
    }

    [Fact]
    public async Task A_drawing_that_comes_during_a_drag_does_not_take_the_part_from_the_pointer()
    {
        await using var visit = await BeginAsync();
        var (plate, brick) = (await LeftAsync(visit.Page, "plate"), await LeftAsync(visit.Page, "brick"));
        await visit.Page.EvaluateAsync("() => { window.drawings = 0; "
            + "document.querySelector('.version-now').closest('#article').addEventListener('rs-drawn', () => "
                + "window.drawings++); }");
        await DragAsync(visit.Page, 0, async () =>
        {
            var box = await BoxAsync(visit.Page, "plate");
            for (var step = 1; step <= 60; step++)
            {
                await visit.Page.Mouse.MoveAsync(box.X + (box.Width / 2) - (step % 30), box.Y + (box.Height / 2));
                await visit.Page.EvaluateAsync("() => new Promise(requestAnimationFrame)");
                var (now, with) = (await LeftAsync(visit.Page, "plate"), await LeftAsync(visit.Page, "brick"));
                // A millimetre is about a pixel in this drawing; the pointer moves in whole pixels and the part in whole
                // millimetres.
                Assert.InRange(plate - (step % 30) - now, -2, 2);
                Assert.Equal(plate - now, brick - with, 0.3);
            }
        });
        Assert.True(await visit.Page.EvaluateAsync<int>("() => window.drawings") > 3);
        visit.AssertQuiet();
    }

    [Fact]
    public async Task Past_the_end_of_its_mount_it_stays_at_the_end()
    {
        await using var visit = await BeginAsync();
        await DragAsync(visit.Page, -900);
        await Visit.SettledAsync(visit.Page);
        await Assertions.Expect(visit.Page.Locator($"{Moved} input")).ToHaveValueAsync("-190");
        Assert.Equal(-0.19, await AtAsync(visit.Page), 6);
        visit.AssertQuiet();
    }

    [Fact]
    public async Task The_keyboard_moves_it_and_the_focus_stays()
    {
        await using var visit = await BeginAsync();
        var plate = visit.Page.Locator(Plate);
        await plate.FocusAsync();
        Assert.Equal(("slider", "-168"), (await plate.GetAttributeAsync("role"), await plate.GetAttributeAsync("aria-valuenow")));
        await visit.Page.Keyboard.PressAsync("ArrowRight");
        await Assertions.Expect(visit.Page.Locator($"{Moved} input")).ToHaveValueAsync("-167");
        await visit.Page.Keyboard.PressAsync("Shift+ArrowRight");
        await Assertions.Expect(visit.Page.Locator($"{Moved} input")).ToHaveValueAsync("-157");
        await visit.Page.Keyboard.PressAsync("Home");
        await Assertions.Expect(visit.Page.Locator($"{Moved} input")).ToHaveValueAsync("-190");
        await visit.Page.Keyboard.PressAsync("End");
        await Assertions.Expect(visit.Page.Locator($"{Moved} input")).ToHaveValueAsync("-136");
        await Visit.SettledAsync(visit.Page);
        await visit.Page.WaitForFunctionAsync("() => document.querySelector('.version-now svg.rs-wide [data-view=side] "
            + ".rs-part[data-part=plate]').dataset.at === '-0.136'");
        Assert.Equal("plate", await visit.Page.EvaluateAsync<string>("() => document.activeElement.dataset.part"));
        // Back to where it was when the keyboard came to it.
        await visit.Page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(visit.Page.Locator(Moved)).ToHaveCountAsync(0);
        Assert.Equal("plate", await visit.Page.EvaluateAsync<string>("() => document.activeElement.dataset.part"));
        visit.AssertQuiet();
    }

    [Fact]
    public async Task Escape_and_the_list_put_it_back()
    {
        await using var visit = await BeginAsync();
        var answer = await visit.AnswerAsync();
        await DragAsync(visit.Page, -30, () => visit.Page.Keyboard.PressAsync("Escape"));
        await Assertions.Expect(visit.Page.Locator(Moved)).ToHaveCountAsync(0);
        await Assertions.Expect(visit.Page.Locator(".version-now .rs-answer p").First).ToHaveTextAsync(answer);
        await DragAsync(visit.Page, -30);
        await Assertions.Expect(visit.Page.Locator(".version-now .rs-answer p").First).Not.ToHaveTextAsync(answer);
        await visit.Page.Locator($"{Moved} input").FillAsync("-140");
        await visit.Page.Locator($"{Moved} input").PressAsync("Tab");
        await visit.Page.WaitForFunctionAsync("() => document.querySelector('.version-now svg.rs-wide [data-view=side] "
            + ".rs-part[data-part=plate]').dataset.at === '-0.14'");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Put back" }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator(".version-now .rs-answer p").First).ToHaveTextAsync(answer);
        await Assertions.Expect(visit.Page.Locator(Moved)).ToHaveCountAsync(0);
        visit.AssertQuiet();
    }

    [Fact]
    public async Task Another_build_begins_unmoved_and_the_first_keeps_its_places()
    {
        await using var visit = await BeginAsync("#places=plate+-150+mm");
        await Assertions.Expect(visit.Page.Locator($"{Moved} input")).ToHaveValueAsync("-150");
        await visit.Page.GetByLabel("Build of the camera").SelectOptionAsync("shoulder");
        await Assertions.Expect(visit.Page.Locator(Moved)).ToHaveCountAsync(0);
        await Assertions.Expect(visit.Page.Locator(".version-now svg.rs-wide .rs-shoulder")).ToHaveCountAsync(1);
        await visit.Page.GetByLabel("Build of the camera").SelectOptionAsync("tripod");
        await Assertions.Expect(visit.Page.Locator($"{Moved} input")).ToHaveValueAsync("-150");
        visit.AssertQuiet();
    }

    [Fact]
    public async Task The_pinned_version_stands_still()
    {
        await using var visit = await BeginAsync();
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Pin this version" }).ClickAsync();
        await visit.Page.Locator(".version-pinned svg.rs-wide").First
            .WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await Visit.SettledAsync(visit.Page);
        Assert.Equal(0, await visit.Page.Locator(".version-pinned .rs-can-move, .version-pinned [role=slider]").CountAsync());
        Assert.NotEqual(0, await visit.Page.Locator(".version-now .rs-can-move").CountAsync());
        visit.AssertQuiet();
    }

    [Fact]
    public async Task A_finger_moves_the_part_and_not_the_page()
    {
        await using var visit = await BeginAsync(width: 390);
        var plate = ".version-now svg.rs-narrow [data-view=side] .rs-part[data-part=plate]";
        await visit.Page.Locator(plate).ScrollIntoViewIfNeededAsync();
        await visit.Page.EvaluateAsync($"() => document.querySelector('{plate}').scrollIntoView({{ block: 'center' }})");
        var (box, scroll) = (await StandingStill.BoxAsync(visit.Page.Locator($"{plate} polygon")),
            await visit.Page.EvaluateAsync<double>("() => scrollY"));
        var session = await visit.Page.Context.NewCDPSessionAsync(visit.Page);
        async Task TouchAsync(string type, double dx, double dy) => await session.SendAsync("Input.dispatchTouchEvent", new()
        {
            ["type"] = type,
            ["touchPoints"] = type == "touchEnd" ? Array.Empty<object>()
                : new object[] { new { x = box.X + (box.Width / 2) + dx, y = box.Y + (box.Height / 2) + dy } },
        });
        await TouchAsync("touchStart", 0, 0);
        for (var step = 1; step <= 12; step++)
        {
            await TouchAsync("touchMove", -step, -10 * step);
            await visit.Page.EvaluateAsync("() => new Promise(requestAnimationFrame)");
        }
        await TouchAsync("touchEnd", 0, 0);
        await Visit.SettledAsync(visit.Page);
        Assert.Equal(scroll, await visit.Page.EvaluateAsync<double>("() => scrollY"));
        Assert.True(await AtAsync(visit.Page) < -0.17);
        visit.AssertQuiet();
    }

    [Theory]
    [InlineData(false, 1280)]
    [InlineData(true, 390)]
    public async Task A_page_with_parts_to_move_has_no_serious_fault(bool night, int width)
    {
        await using var visit = await BeginAsync("#places=plate+-150+mm", width, night);
        var result = await visit.Page.RunAxe();
        Assert.Empty(result.Violations.Where(violation => violation.Impact is "serious" or "critical")
            .Select(violation => $"{violation.Id} ({violation.Help}): "
                + $"{string.Join(" | ", violation.Nodes.Take(3).Select(node => node.Html))}"));
        visit.AssertQuiet();
    }

    private async Task<Visit> BeginAsync(string fragment = "", int width = 1280, bool night = false)
    {
        var visit = await Visit.BeginAsync(chromium, ownNotebooks: false, width: width, height: 900, night: night);
        await visit.ReadAsync("05-moves", fragment);
        await visit.Page.Locator(".version-now .rs-can-move").First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        return visit;
    }

    /// <summary>Takes the plate, moves it that many pixels, does something, and lets go.</summary>
    private static async Task DragAsync(IPage page, float pixels, Func<Task>? meanwhile = null)
    {
        await Visit.SettledAsync(page);
        await page.EvaluateAsync($"() => document.querySelector('{Plate}').scrollIntoView({{ block: 'center' }})");
        var box = await BoxAsync(page, "plate");
        await page.Mouse.MoveAsync(box.X + (box.Width / 2), box.Y + (box.Height / 2));
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(box.X + (box.Width / 2) + pixels, box.Y + (box.Height / 2), new() { Steps = 8 });
        if (meanwhile is not null)
            await meanwhile();
        await page.Mouse.UpAsync();
    }

    private static Task<LocatorBoundingBoxResult> BoxAsync(IPage page, string part) => StandingStill.BoxAsync(
        page.Locator($".version-now svg.rs-wide [data-view=side] .rs-part[data-part={part}] polygon"));

    private static async Task<double> LeftAsync(IPage page, string part) =>
        await page.EvaluateAsync<double>($"() => document.querySelector('.version-now svg.rs-wide [data-view=side] "
            + $".rs-part[data-part={part}] polygon').getBoundingClientRect().left");

    private static async Task<double> AtAsync(IPage page) =>
        double.Parse((await page.Locator(Plate).GetAttributeAsync("data-at"))!,
            System.Globalization.CultureInfo.InvariantCulture);
}
