using RigScenarios.Answers;
using RigScenarios.Scenarios;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Cli.Answers;

/// <summary>How the days go, for programs, beside the answer that all commands share. The shape is documented in docs/json.md and
/// held by a test; fields are added, never changed.</summary>
internal static class DayJson
{
    public static string Text(Scenario scenario, IReadOnlyList<DayAnswer> answers) =>
        JsonText.Answers(scenario, [.. answers.Select(answer => JsonText.Entry(answer.Answer, null, "day", One(answer)))]);

    private static object One(DayAnswer asked)
    {
        var (answer, result) = (asked.Answer, asked.Answer.Simulation);
        return new
        {
            not_planned = NotPlanned.Of(answer.Scenario, answer.Build, answer.Days.Count),
            chargers = answer.Plan.Chargers.Where(charger => charger.Value.Bays > 0)
                .Zip(ChargerWords.Of(answer.Plan), (charger, words) => new
                {
                    charger = charger.Key,
                    bays = charger.Value.Bays,
                    stands = charger.Value.Stands,
                    power_from = charger.Value.PowerFrom?.ToString().ToLowerInvariant(),
                    draws_up_to_W = JsonText.Round((double)ChargerWords.Draw(charger.Value, answer.Plan).Watts),
                    words,
                }),
            least_charge_at_swap_percent = JsonText.Round(result.LeastChargeAtSwap?.Percent),
            energy_left_Wh = JsonText.Round(result.EnergyLeft.WattHours),
            from_packs_Wh = JsonText.Round(result.FromPacks.WattHours),
            from_wall_Wh = JsonText.Round(result.FromWall.WattHours),
            day_by_day = result.Days.Select(day => new
            {
                day = answer.Days[day.Number - 1],
                number = day.Number,
                title = answer.Plan.Days[day.Number - 1].Title,
                from_h = Hours(day.Start),
                to_h = Hours(day.End),
                completes = day.Completes,
                from_packs_Wh = JsonText.Round(day.FromPacks.WattHours),
                from_wall_Wh = JsonText.Round(day.FromWall.WattHours),
                charges = day.ChargeAtStart.Select(item => new
                {
                    battery = item.Key, at_start_percent = JsonText.Round(item.Value.Percent),
                    at_end_percent = JsonText.Round(day.ChargeAtEnd[item.Key].Percent),
                }),
            }),
            swaps = result.Swaps.Select(swap => new
            {
                at_h = Hours(swap.Time),
                day = swap.Day,
                block = swap.Block,
                comes_off = swap.Off,
                comes_off_percent = JsonText.Round(swap.ChargeOff?.Percent),
                goes_on = swap.On,
                goes_on_percent = JsonText.Round(swap.ChargeOn.Percent),
                forced = swap.Forced,
            }),
            down_times = result.DownTimes.Select(down => new
            {
                device = down.Device,
                from_h = Hours(down.Start),
                to_h = Hours(down.End),
                day = down.Day,
                block = down.Block,
                in_take = down.InTake,
                cause = DayPlanWords.CauseInWords(down.Reason, down.Awaits),
                because = down.Reason.ToString(),
            }),
            batteries = result.Batteries.Select(battery => new
            {
                battery = battery.Key,
                part = answer.Plan.Batteries[battery.Key].Part.Name,
                charge_left_percent = JsonText.Round(battery.Value.ChargeLeft.Percent),
                delivered_Wh = JsonText.Round(battery.Value.Delivered.WattHours),
                charged_Wh = JsonText.Round(battery.Value.Charged.WattHours),
                from_wall_Wh = JsonText.Round(battery.Value.FromWall.WattHours),
                heat_Wh = JsonText.Round(battery.Value.Heat.WattHours),
                timeline = battery.Value.Spans.Select(span => new
                {
                    place = span.Place.InWords(),
                    from_h = Hours(span.Start),
                    to_h = Hours(span.End),
                    charge_from_percent = JsonText.Round(span.ChargeAtStart.Percent),
                    charge_to_percent = JsonText.Round(span.ChargeAtEnd.Percent),
                    temperature_from_C = JsonText.Round(span.TemperatureAtStart.DegreesCelsius),
                    temperature_to_C = JsonText.Round(span.TemperatureAtEnd.DegreesCelsius),
                }),
            }),
            least_kit = asked.Least is { } least ? Least(least, asked.Wish) : null,
            assumed = result.Assumed.SelectMany(item => item.Value.Select(value => new
            {
                battery = item.Key, field = value.Field, name = value.Name, value = value.Value, why = value.Why,
                source = value.Source.ToString(),
            })),
            lock_before_swap = answer.Balance?.LocksBeforeSwap,
        };
    }

    private static object Least(LeastKitResult least, KitWish wish) => new
    {
        words = DayPlanWords.Least(least, wish),
        keep_at_swap_percent = JsonText.Round(wish.LeastAtSwap?.Percent),
        keep_at_end_h = JsonText.Round(wish.TimeLeft?.Hours),
        batteries = least.Least?.Batteries,
        bays = least.Least?.BayCount,
        tried = least.Tried.Select(trial => new
        {
            batteries = trial.Batteries,
            bays = trial.BayCount,
            bays_of = trial.Bays.Select(item => new { charger = item.Key, bays = item.Value }),
            simulated = trial.Simulated,
            survives = trial.Survives,
            where = trial.Where,
        }),
    };

    /// <summary>Hours from midnight of the first day.</summary>
    private static double Hours(Duration time) => Math.Round(time.Hours, 4);
}
