using RigScenarios.Cells;

namespace RigScenarios.Travel;

/// <summary>The texts that the editions rest on.</summary>
internal static class RuleSources
{
    public static readonly Citation PassengerPage = new(
        "Federal Aviation Administration", "Airline passengers and batteries", null,
        "faa.gov/hazmat/packsafe, with its pages on spare batteries", Standing.ReadInSource);

    public static readonly Citation PassengerCode = new(
        "United States", "49 CFR 175.10(a)(18)", 2022, "amended until 27 December 2022; its (18) was read in the edition of "
            + "1 October 2018, p. 832, and in what an authority's letters of 2018 and 2023 say of it", Standing.SecondHand);

    public static readonly Citation PersonalUse = new(
        "Pipeline and Hazardous Materials Safety Administration", "Interpretation response 23-0051 on 49 CFR 175.10", 2023,
        "phmsa.dot.gov, letter of 17 August 2023 to a maker of devices of professional timekeepers; its end was not read",
        Standing.ReadInSource);

    public static readonly Citation MainPurpose = new(
        "Pipeline and Hazardous Materials Safety Administration", "Interpretation response 17-0081 on 49 CFR 175.10(a)(18)(iv)",
        2018, "phmsa.dot.gov, letter of 2 August 2018", Standing.ReadInSource);

    public static readonly Citation DevicesInHold = new(
        "International Air Transport Association", "Dangerous Goods Regulations, 67th edition, 2.3.5", 2026,
        "read in the handbook Lithium Batteries 2023, p. 35, and in a news report of 12 March 2026 (qazinform.com)",
        Standing.SecondHand);

    public static readonly Citation MainFunction = new(
        "One large airline", "Its page on forbidden articles, power banks", null, "etihad.com, prohibited items, read in Italian",
        Standing.ReadInSource);

    public static readonly Citation StricterStates = new(
        "News reports of what airlines and states ask", "Power banks: overhead locker, use and number on board", 2026,
        "the-independent.com, 20 January 2026 (airlines of one European group); news.kbs.co.kr, 4 March 2025 (Republic of "
            + "Korea: five small ones); en.people.cn, 11 July 2025 (China: the CCC mark)", Standing.SecondHand);

    public static readonly Citation Handbook = new(
        "", "Lithium Batteries 2024 (handbook of transport rules)", 2024, "p. 35, lithium.batteriestransport.org",
        Standing.SecondHand);

    public static readonly Citation AnyKind = new(
        "Civil Aviation Authority of New Zealand", "What can I bring: batteries, dry-cell and nickel-metal hydride", null,
        "aviation.govt.nz; the international rule itself (Dangerous Goods Regulations, 2.3) second-hand", Standing.ReadInSource);

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

    public static readonly Citation Advice2025 = new(
        "International Air Transport Association", "Dangerous Goods Regulations, 66th edition, packing instructions 966 and 967",
        2025, "read in a training company's summary of 21 October 2024 (lion.com)", Standing.SecondHand);

    public static readonly Citation Section966 = new(
        "International Air Transport Association", "Packing instruction 966, section I", null,
        "read at dg-packaging.nl, UN 3481", Standing.SecondHand);

    public static readonly Citation Section967 = new(
        "International Air Transport Association", "Packing instruction 967, section I", null,
        "read at dg-packaging.nl, UN 3481", Standing.SecondHand);

    public static readonly Citation Instruction967 = new(
        "International Air Transport Association", "Dangerous Goods Regulations, 67th edition, packing instruction 967", 2026,
        "read in summaries by two freight companies (October 2024, February 2026)", Standing.SecondHand);

    public static readonly Citation SmallBattery = new(
        "United States", "49 CFR 173.185(c)(1)(i)", null, "read in a data set that quotes the eCFR", Standing.SecondHand);

    public static readonly Citation TestSummary = new(
        "United Nations", "Manual of Tests and Criteria, 38.3.5", 2023, "read in two summaries", Standing.SecondHand);

    public static readonly Citation Damaged = new(
        "Federal Aviation Administration", "Questions and answers on batteries carried by passengers", 2017,
        "read in a copy of 2 January 2017", Standing.SecondHand);

    public static readonly Citation Provision188 = new(
        "United Nations Economic Commission for Europe", "ADR, special provision 188", null,
        "read in Swedish at safepaconline.com, and in the handbook Lithium Batteries 2024, p. 122", Standing.SecondHand);

    public static readonly Citation LargeByRoad = new(
        "United Nations Economic Commission for Europe", "ADR, UN 3480 and 3481, packing instruction P903", null,
        "read in the handbook Lithium Batteries 2023, p. 86 and 114", Standing.SecondHand);

    public static readonly Citation Points = new(
        "United Nations Economic Commission for Europe", "ADR, 1.1.3.6", null,
        "read in the handbook Lithium Batteries 2023, p. 35", Standing.SecondHand);

    public static readonly Citation OwnWork = new(
        "United Nations Economic Commission for Europe", "ADR, 1.1.3.1 (c)", null,
        "read in Spanish in a copy of its text (studylib.es), and in a packaging maker's summary (retron.world)",
        Standing.SecondHand);

    public static readonly Citation ParkedCars = new(
        "Fire and Emergency New Zealand", "Lithium-ion battery safety", null, "fireandemergency.nz", Standing.ReadInSource);

    public static readonly Citation Post = new(
        "Postal services of the United States and the United Kingdom", "What they take", 2012,
        "read in a trade journal (parcelindustry.com, 2012) and in a forum that quotes the service's page (talkphotography.org)",
        Standing.SecondHand);

    public static Citation Memory(string what) => Citation.FromMemory(what);
}
