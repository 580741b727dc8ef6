using RigScenarios.Cells;

namespace RigScenarios.Travel;

/// <summary>The texts that the editions rest on.</summary>
internal static class RuleSources
{
    public static readonly Citation PassengerPage = new(
        "Federal Aviation Administration", "Airline passengers and batteries", null,
        "faa.gov/hazmat/packsafe, with its pages on spare batteries", Standing.ReadInSource);

    public static readonly Citation PassengerCode = new(
        "United States", "49 CFR 175.10(a)(18), edition of 1 October 2018", 2018, "p. 832; p. 831 was not read",
        Standing.ReadInSource);

    public static readonly Citation Handbook = new(
        "", "Lithium Batteries 2024 (handbook of transport rules)", 2024, "p. 35, lithium.batteriestransport.org",
        Standing.SecondHand);

    public static readonly Citation SpareCount = new(
        "International Air Transport Association", "Dangerous Goods Regulations, 2.3", null, "read in two pages that quote it",
        Standing.SecondHand);

    public static readonly Citation Edition67 = new(
        "International Air Transport Association", "Dangerous Goods Regulations, 67th edition", 2026,
        "read in a news report of 12 March 2026 (qazinform.com)", Standing.SecondHand);

    public static readonly Citation Addendum = new(
        "International Civil Aviation Organization",
        "Technical Instructions (Doc 9284) 2025-2026, Addendum 1, from 27 March 2026", 2026,
        "read on the pages of the UK Civil Aviation Authority (caa.co.uk) and dgonline.training", Standing.SecondHand);

    public static readonly Citation LooseCargo = new(
        "Pipeline and Hazardous Materials Safety Administration",
        "Rules on lithium batteries as air cargo, 84 FR 8006 (6 March 2019) and 87 FR 77995 (21 December 2022)", 2022, "",
        Standing.ReadInSource);

    public static readonly Citation Instruction965 = new(
        "International Air Transport Association", "Packing instruction 965, section IB", null,
        "read at dg-packaging.nl, UN 3480", Standing.SecondHand);

    public static readonly Citation Instruction966 = new(
        "International Air Transport Association", "Dangerous Goods Regulations, 67th edition, packing instruction 966", 2026,
        "read in summaries by two freight companies (October 2024, February 2026)", Standing.SecondHand);

    public static readonly Citation Package966 = new(
        "International Air Transport Association", "Packing instruction 966, section II", 2024,
        "read in the handbook Lithium Batteries 2024, p. 122", Standing.SecondHand);

    public static readonly Citation Instruction967 = new(
        "International Air Transport Association", "Dangerous Goods Regulations, 67th edition, packing instruction 967", 2026,
        "read in summaries by two freight companies (October 2024, February 2026)", Standing.SecondHand);

    public static readonly Citation SmallBattery = new(
        "United States", "49 CFR 173.185(c)(1)(i)", null, "read in a data set that quotes it", Standing.SecondHand);

    public static readonly Citation TestSummary = new(
        "United Nations", "Manual of Tests and Criteria, 38.3.5", 2023, "read in two summaries", Standing.SecondHand);

    public static readonly Citation Damaged = new(
        "Federal Aviation Administration", "Questions and answers on batteries carried by passengers", 2017,
        "read in a copy of 2 January 2017", Standing.SecondHand);

    public static Citation Memory(string what) => Citation.FromMemory(what);
}
