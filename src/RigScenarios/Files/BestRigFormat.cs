using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Files;

/// <summary>How the question of the best rig stands in a scenario file.</summary>
internal static class BestRigFormat
{
    /// <summary>More slots than this are no rig.</summary>
    public const int MostSlots = 40;

    /// <summary>More candidates than this of one slot are no choice that somebody can look through.</summary>
    public const int MostCandidates = 200;

    private static readonly Format<RigSlot> Slot = new RecordFormat<RigSlot>(
        () => new RigSlot(), "A place in the build with what may stand there; what the kit has there now is always a candidate.",
        Fields<RigSlot>.OptionalGroup("replaces", ScenarioFormat.KitName, slot => slot.Replaces,
            (slot, value) => slot with { Replaces = value },
            "The thing of the build that it replaces, by its name in the kit; the one of the slot's own name if left out."),
        new Field<RigSlot, IReadOnlyList<string>>("parts", new ListFormat<string>(ScenarioFormat.KitName, MostCandidates),
            slot => slot.Parts.Count > 0, slot => slot.Parts, (slot, value) => slot with { Parts = value }, false,
            "Parts that may stand there, by their ids."),
        Fields<RigSlot>.Optional("kind", new ChoiceFormat<PartKind>(), slot => slot.Kind,
            (slot, value) => slot with { Kind = value }, "Every part of this kind may stand there."),
        new Field<RigSlot, IReadOnlyList<string>>("from-kit", new ListFormat<string>(ScenarioFormat.KitName, MostCandidates),
            slot => slot.FromKit.Count > 0, slot => slot.FromKit, (slot, value) => slot with { FromKit = value }, false,
            "Things of the kit that may stand there, by their names."),
        Fields<RigSlot>.WithDefault("may-stay-empty", new YesNoFormat(), false, slot => slot.MayStayEmpty,
            (slot, value) => slot with { MayStayEmpty = value }, "Whether the build may do without it. No if left out."));

    private static readonly Format<LastsMust> Lasts = new RecordFormat<LastsMust>(
        () => new LastsMust(), "Every essential device runs to the end of the days; {} for no more than that.",
        Fields<LastsMust>.Optional("air", ScenarioFormat.Air, must => must.Air, (must, value) => must with { Air = value },
            "The coldest air: that of all days is moved so that its coldest point is this."),
        Fields<LastsMust>.Optional("reserve", PartFormat.Shares, must => must.Reserve,
            (must, value) => must with { Reserve = value },
            "What must be left at the end of the tightest day, as a part of all that the batteries could have given."),
        Fields<LastsMust>.Optional("reserve-time", new DurationFormat(Duration.FromMinutes(1), Duration.FromHours(200), "1 h"),
            must => must.ReserveTime, (must, value) => must with { ReserveTime = value },
            "How much longer it must be able to run after the tightest day."));

    private static readonly Format<RigMusts> Musts = new RecordFormat<RigMusts>(
        () => new RigMusts(), "What must hold; what is left out is not asked.",
        Fields<RigMusts>.OptionalGroup("lasts", Lasts, musts => musts.Lasts, (musts, value) => musts with { Lasts = value },
            "It lasts the days."),
        Fields<RigMusts>.Optional("flies", new ChoiceFormat<FliesMust>(), musts => musts.Flies,
            (musts, value) => musts with { Flies = value },
            "Its batteries may go in the cabin of a passenger flight, as spare ones of one traveller."),
        Fields<RigMusts>.WithDefault("balances", new YesNoFormat(), false, musts => musts.Balances,
            (musts, value) => musts with { Balances = value }, "It balances on head, shoulder or hand."),
        Fields<RigMusts>.WithDefault("holds", new YesNoFormat(), false, musts => musts.Holds,
            (musts, value) => musts with { Holds = value }, "No limit of wiring, tripod and joints is passed."),
        Fields<RigMusts>.Optional("budget", new MoneyFormat(), musts => musts.Budget,
            (musts, value) => musts with { Budget = value }, "The most that it may cost."),
        Fields<RigMusts>.Optional("mass", PartFormat.Masses, musts => musts.Mass,
            (musts, value) => musts with { Mass = value }, "The most that the rig may weigh, without head and tripod."),
        Fields<RigMusts>.WithDefault("close-will-do", new YesNoFormat(), false, musts => musts.CloseWillDo,
            (musts, value) => musts with { CloseWillDo = value },
            "Whether a verdict of \"close\" will do as well as \"holds\". No if left out."));

    private static readonly Format<UpgradeTerms> Upgrade = new RecordFormat<UpgradeTerms>(
        () => new UpgradeTerms(), "What there is to spend, year by year: \"search\" then says in which order to buy.",
        Fields<UpgradeTerms>.Required("budget-a-year", new MoneyFormat(), terms => terms.BudgetAYear,
            (terms, value) => terms with { BudgetAYear = value },
            "What is added to the savings at the start of each year."),
        Fields<UpgradeTerms>.Required("years", new CountFormat(1, 20), terms => terms.Years,
            (terms, value) => terms with { Years = value }, "For how many years."));

    private static readonly Format<BestRig> Whole = new RecordFormat<BestRig>(
        () => new BestRig(), "Which parts to take: what may stand where, what must hold, what is wished.",
        Fields<BestRig>.Required("build", ScenarioFormat.KitName, best => best.Build,
            (best, value) => best with { Build = value }, "The build to start from."),
        new Field<BestRig, IReadOnlyList<string>>("days", new ListFormat<string>(ScenarioFormat.KitName, 100),
            best => best.Days.Count > 0, best => best.Days, (best, value) => best with { Days = value }, false,
            "The days that it is for, by their short names; all if left out."),
        Fields<BestRig>.Required("slots", new MapFormat<RigSlot>(Slot, "slot", MostSlots), best => best.Slots,
            (best, value) => best with { Slots = value }, "What may be replaced, by names of its own."),
        Fields<BestRig>.WithDefault("musts", Musts, new RigMusts(), best => best.Musts,
            (best, value) => best with { Musts = value }, "What must hold."),
        new Field<BestRig, IReadOnlyList<RigWish>>("wishes", new ListFormat<RigWish>(new ChoiceFormat<RigWish>(), 4, 1),
            best => !best.Wishes.SequenceEqual(new BestRig().Wishes), best => best.Wishes, (best, value) =>
            best with { Wishes = value }, false,
            "What is wished for, each a goal of its own: least-cost, least-mass, longest-day, largest-margin. The first and "
                + "the third if left out."),
        Fields<BestRig>.OptionalGroup("upgrade", Upgrade, best => best.Upgrade,
            (best, value) => best with { Upgrade = value }, "In which order to buy over some years."));

    /// <summary>The question of a scenario.</summary>
    public static readonly Field<Scenario> Field = Fields<Scenario>.OptionalGroup("best-rig", Whole,
        scenario => scenario.BestRig, (scenario, value) => scenario with { BestRig = value },
        "Which parts to take: the question that \"search\" answers.");
}
