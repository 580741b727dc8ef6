using Microsoft.Playwright;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>The pages on a phone, in a hand: everything is large enough for a finger, fits the screen, gets the right keyboard
/// and needs no pointer that hovers.</summary>
[Collection(InABrowser.Name)]
public sealed class PhoneTests(Chromium chromium)
{
    private const string Sample = "/rig?file=samples/winter-harbour.yaml&build=tripod&day=day-one";

    // 44 CSS pixels: WCAG 2.2, 2.5.5, "Target Size (Enhanced)". What it leaves out is left out here: a link in a sentence, and
    // what another control of that size does too (a short block of the day: "Block before" and "Block after"; an edge: the field
    // of its length; a part of a drawing: the field of its place). What is chosen in a drawing is as large as the drawing's scale
    // lets it: 24 px at least (2.5.8).
    private const string Small = """
        () => { return [...document.querySelectorAll("button, .button, a[href], select, summary, input, textarea, [role=slider], "
            + "[role=button], [role=option], label:has(input)")]
          .filter(e => e.getClientRects().length > 0 && e.checkVisibility() && !e.matches("label input, .visually-hidden, .skip")
            && !e.closest(".strip-item, .rs-part, .modebar") && !(e.matches("a") && isInSentence(e)))
          .map(e => [e, e.getBoundingClientRect(), e.closest("svg") ? 24 : 43.9])
          .filter(([, box, least]) => box.height < least || box.width < least)
          .map(([e, box]) => `${e.outerHTML.slice(0, 110)} ${Math.round(box.width)} x ${Math.round(box.height)}`);
        function isInSentence(link) {
          const around = link.closest("p, li, td, .below");
          return around !== null && around.textContent.trim().length > link.textContent.trim().length + 3;
        } }
        """;

    // What stands out at the side, but for what is in a box of its own that is moved aside.
    private const string Wide = """
        () => { return [...document.body.querySelectorAll("*")].filter(e => e.getClientRects().length > 0 && e.checkVisibility()
            && !e.closest(".visually-hidden, .skip, svg, .rs-chart, .answer-line-seen")
            && e.getBoundingClientRect().right > innerWidth + 1 && !isMoved(e))
          .map(e => `${e.outerHTML.slice(0, 110)} to ${Math.round(e.getBoundingClientRect().right)}`).slice(0, 5);
        function isMoved(element) {
          for (let box = element.parentElement; box && box !== document.body; box = box.parentElement)
            if (getComputedStyle(box).overflowX !== "visible") return true;
          return false;
        } }
        """;

    [Theory]
    [InlineData(390, 844)]
    [InlineData(320, 640)]
    [InlineData(844, 390)]
    public async Task Whatever_one_taps_is_large_enough_for_a_finger(int width, int height)
    {
        await using var visit = await BeginAsync(width, height);
        var small = new List<string>();
        await visit.Page.Locator("#notebook-list > li").First.WaitForAsync();
        await LookAsync("the shelf");
        await OpenSampleAsync(visit);
        await LookAsync("a rig");
        await UnfoldAsync(visit.Page);
        await Form.NotListedAsync(visit.Page, "transmitter");
        await visit.Page.Locator("#question-monitor [role=combobox]").First.ClickAsync();
        await LookAsync("a rig, unfolded");
        await visit.Page.Locator("#answer-line").ClickAsync();
        await LookAsync("a rig, its answer opened");
        await visit.ReadAsync("01-one-build-one-day");
        await visit.Page.Locator(".strip-fold").ClickAsync();
        await LookAsync("a notebook");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Save…" }).ClickAsync();
        await visit.Page.Locator("dialog").WaitForAsync();
        await LookAsync("what can be saved of a notebook");
        Assert.True(small.Count == 0, string.Join('\n', small));
        visit.AssertQuiet();

        async Task LookAsync(string where) =>
            small.AddRange((await visit.Page.EvaluateAsync<string[]>(Small)).Distinct().Select(one => $"{where}: {one}"));
    }

    [Theory]
    [InlineData(390, 844)]
    [InlineData(320, 640)] // also 1280 at 400 %: WCAG 2.2, 1.4.10, "Reflow"
    public async Task Nothing_stands_out_at_the_side(int width, int height)
    {
        await using var visit = await BeginAsync(width, height);
        var wide = new List<string>();
        await visit.Page.Locator("#notebook-list > li").First.WaitForAsync();
        await LookAsync("the shelf");
        await visit.GoAsync("/rig");
        await visit.Page.Locator("#rig").WaitForAsync();
        await Form.NotListedAsync(visit.Page, "camera");
        await LookAsync("a new rig with an own body");
        await OpenSampleAsync(visit);
        await UnfoldAsync(visit.Page);
        await visit.Page.Locator("#question-monitor [role=combobox]").First.ClickAsync();
        await LookAsync("a list of parts");
        await visit.Page.Keyboard.PressAsync("Escape");
        await visit.Page.Locator("#answer-parts .rs-narrow .wire-element").First.FocusAsync();
        await visit.Page.Keyboard.PressAsync("Enter");
        await visit.Page.Locator(".wire-panel").WaitForAsync();
        await visit.Page.Locator("#compare-more").ClickAsync();
        await visit.Page.Locator("#compare-table").WaitForAsync();
        await LookAsync("a rig, all of it open");
        await visit.ReadAsync("01-one-build-one-day");
        await LookAsync("a notebook");
        Assert.True(wide.Count == 0, string.Join('\n', wide));
        visit.AssertQuiet();

        async Task LookAsync(string where)
        {
            Assert.Equal((where, width), (where, await visit.Page.EvaluateAsync<int>(
                "() => document.documentElement.scrollWidth")));
            wide.AddRange((await visit.Page.EvaluateAsync<string[]>(Wide)).Select(one => $"{where}: {one}"));
        }
    }

    // The kinds of field, one of each: HTML Living Standard, "inputmode" and "enterkeyhint" (section 6.8, Editing).
    [Theory]
    [InlineData("[data-field=charge] input[type=text]", "decimal", "done")]
    [InlineData("[data-field=swap-at] input", "decimal", "done")]
    [InlineData("[data-field=ambient] input[type=text]", "decimal", "done")]
    [InlineData("[data-field=place-plate] input", "decimal", "done")]
    [InlineData("[data-field=battery-count] input", "numeric", "done")]
    [InlineData("[data-field=rented-days] input", "numeric", "done")]
    [InlineData("[data-field=starts] input", "numeric", "done")]
    [InlineData("#block-length", "decimal", "done")]
    [InlineData("#log-charge", "decimal", "done")]
    [InlineData("#question-monitor .thing-count", "numeric", "done")]
    [InlineData("#question-transmitter .own [data-field=mass] input", "decimal", "done")]
    [InlineData("[data-field=power-hours] input", "text", "done")]
    [InlineData("[data-field=age-bought] input", "text", "done")]
    [InlineData("[data-field=budget] input", "text", "done")]
    [InlineData("[data-field=title] input", "text", "done")]
    [InlineData("#question-monitor [role=combobox]", "text", "done")]
    [InlineData("#save-name", "text", "go")]
    public async Task A_field_brings_up_its_keyboard(string field, string keyboard, string enter)
    {
        await using var visit = await BeginAsync(390, 844);
        await OpenSampleAsync(visit);
        await Form.NotListedAsync(visit.Page, "transmitter");
        await UnfoldAsync(visit.Page);
        var input = visit.Page.Locator(field).First;
        await input.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        Assert.Equal((keyboard, enter), (await input.EvaluateAsync<string>("input => input.inputMode || 'text'"),
            await input.GetAttributeAsync("enterkeyhint")));
    }

    [Fact]
    public async Task A_number_in_another_unit_keeps_the_letters_of_the_keyboard()
    {
        await using var visit = await BeginAsync(390, 844);
        await visit.GoAsync("/rig");
        await visit.Page.Locator("#rig").WaitForAsync();
        var own = await Form.NotListedAsync(visit.Page, "camera");
        var mass = own.Locator("[data-field=mass] input").First;
        await Assertions.Expect(mass).ToHaveAttributeAsync("inputmode", "decimal");
        await mass.FillAsync("1.2 kg");
        await mass.BlurAsync();
        await Assertions.Expect(mass).ToHaveAttributeAsync("inputmode", "text");
        await mass.FillAsync("1200");
        await mass.BlurAsync();
        await Assertions.Expect(mass).ToHaveValueAsync("1200 g");
        await Assertions.Expect(mass).ToHaveAttributeAsync("inputmode", "decimal");
        visit.AssertQuiet();
    }

    [Fact]
    public async Task A_number_below_zero_is_given_without_a_minus_key()
    {
        await using var visit = await BeginAsync(390, 844);
        await OpenSampleAsync(visit);
        var cold = visit.Page.Locator("#ambient");
        await cold.FillAsync("12");
        await cold.PressAsync("Enter");
        // Enter puts the keyboard away, so that the verdict is seen.
        await Assertions.Expect(cold).Not.ToBeFocusedAsync();
        await Assertions.Expect(cold).ToHaveValueAsync("12 °C");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "How cold: above or below zero" }).TapAsync();
        await Assertions.Expect(cold).ToHaveValueAsync("-12 °C");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "How cold: above or below zero" }).TapAsync();
        await Assertions.Expect(cold).ToHaveValueAsync("12 °C");
        visit.AssertQuiet();
    }

    [Fact]
    public async Task Nothing_waits_for_a_pointer_that_hovers()
    {
        await using var visit = await BeginAsync(390, 844);
        await OpenSampleAsync(visit);
        await UnfoldAsync(visit.Page);
        // A rule of the style that shows something while the pointer is over it shows it to whoever comes by Tab or tap too. What
        // the bar of a chart does, its own row of buttons does.
        Assert.Empty(await visit.Page.EvaluateAsync<string[]>("""
            () => [...document.styleSheets].flatMap(sheet => [...sheet.cssRules])
              .filter(rule => !/plotly/.test(rule.selectorText ?? "")).flatMap(rule => rule.cssRules
                && !/hover/.test(rule.conditionText ?? "") ? [rule, ...rule.cssRules] : [rule])
              .filter(rule => /:hover/.test(rule.selectorText ?? "") && !/:focus|:active/.test(rule.selectorText)
                && /display|visibility|opacity|content|height|width|clip|transform/.test(rule.style.cssText))
              .map(rule => rule.cssText)
            """));
        // What a word at the pointer says is written or spoken elsewhere too.
        Assert.Empty(await visit.Page.EvaluateAsync<string[]>("""
            () => { return [...document.querySelectorAll("[title]")].filter(e => e.title && e.checkVisibility())
              .filter(e => !plain(document.body.innerText).includes(plain(e.title)) && !e.matches("[data-theme-button]")
                && !plain(e.getAttribute("aria-label") ?? "").includes(plain(e.title)) && !e.matches(".block, #undo-bar button"))
              .map(e => `${e.outerHTML.slice(0, 90)}: ${e.title}`);
            function plain(text) { return text.replace(/\s+/g, " ").toLowerCase(); } }
            """));
        visit.AssertQuiet();
    }

    [Fact]
    public async Task A_short_block_is_reached_from_its_neighbour_and_its_edge_is_under_a_finger()
    {
        await using var visit = await BeginAsync(390, 844);
        await OpenSampleAsync(visit);
        var name = visit.Page.Locator("#block-title");
        await Assertions.Expect(name).ToHaveValueAsync("Rigging and picture check");
        var after = visit.Page.GetByRole(AriaRole.Button, new() { Name = "Block after", Exact = true });
        for (var block = 2; block <= 14; block++)
        {
            await after.TapAsync();
            await Assertions.Expect(visit.Page.Locator("#block-which")).ToHaveTextAsync($"Block {block} of 14");
        }
        // It comes into sight in the strip, which is wider than the phone.
        await Assertions.Expect(visit.Page.Locator(".strip-selected .block")).ToBeInViewportAsync();
        await Assertions.Expect(after).ToHaveAttributeAsync("aria-disabled", "true");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Block before", Exact = true }).TapAsync();
        await Assertions.Expect(visit.Page.Locator("#block-which")).ToHaveTextAsync("Block 13 of 14");
        // Of the edges only that of the chosen block takes a finger, and it is large; the others let the strip be pushed aside.
        var edges = await visit.Page.EvaluateAsync<double[]>("() => [...document.querySelectorAll('.edge')]"
            + ".filter(edge => getComputedStyle(edge).pointerEvents !== 'none').map(edge => edge.getBoundingClientRect().width)");
        Assert.Equal([44.0], edges);
        visit.AssertQuiet();
    }

    [Fact]
    public async Task On_a_phone_the_opened_verdict_leads_to_all_of_the_answer()
    {
        await using var visit = await BeginAsync(390, 844);
        await OpenSampleAsync(visit);
        await visit.Page.Locator("#answer-line").TapAsync();
        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "All of the answer" }).TapAsync();
        await Assertions.Expect(visit.Page.Locator("#answer-first .rs-answer")).ToBeHiddenAsync();
        await Assertions.Expect(visit.Page.Locator("#answer-rest")).ToBeFocusedAsync();
        Assert.InRange(await visit.Page.EvaluateAsync<double>(
            "() => document.querySelector('#answer-rest').getBoundingClientRect().top"), 0, 200);
        // The line says its sentence whole.
        Assert.True(await visit.Page.Locator("#answer-line-text").EvaluateAsync<bool>(
            "text => text.scrollWidth <= text.clientWidth + 1 "
                + "&& text.parentElement.scrollWidth <= text.parentElement.clientWidth"));
        visit.AssertQuiet();
    }

    private Task<Visit> BeginAsync(int width, int height) =>
        Visit.BeginAsync(chromium, width: width, height: height, touch: true);

    private static async Task OpenSampleAsync(Visit visit)
    {
        await visit.GoAsync(Sample);
        await visit.Page.Locator("#answer-first .rs-answer").First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await visit.Page.Locator("#answer-rests-list li").First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
    }

    private static async Task UnfoldAsync(IPage page) => await page.EvaluateAsync(
        "() => document.querySelectorAll('#rig details').forEach(fold => { fold.open = true; })");
}
