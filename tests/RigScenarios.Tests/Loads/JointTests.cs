using CsCheck;
using RigScenarios.Balance;
using RigScenarios.Loads;
using RigScenarios.Parts;
using RigScenarios.Tests.Balance;
using UnitsNet;

namespace RigScenarios.Tests.Loads;

/// <summary>What joints, mounts and hands carry adds up.</summary>
public class JointTests
{
    [Fact]
    public void Carbon_rods_say_which_carbon_they_are_taken_for() =>
        Each.Of((string[])["woven cloth", $"{RodMaterial.WovenCarbon.ElasticModulus.Gigapascals:0} GPa",
            "straight fibres have about 135"],
            words => Assert.Contains(words, RodMaterial.WovenCarbon.Name, StringComparison.Ordinal));

    [Fact]
    public void Joints_at_the_rig_carry_all_of_its_weight_and_moment() => RandomRigs.Builds.Holds(
        build =>
        {
            var roots = build.Parts.Where(part => part.Value.Placement.Carrier is null)
                .Select(part => JointLoad.Of(build, part.Key, 1.5)).ToList();
            var weight = 1.5 * StandardGravity.Weight(build.MassProperties.Mass).Newtons;
            Assert.Equal(weight, roots.Sum(load => load.Force.Newtons), 1e-9);
            var aboutOrigin = roots.Sum(load => load.NoseDown.NewtonMeters
                + (load.Force.Newtons * build.MassProperties.Parts[load.Part].MountingPoint.X.Meters));
            Assert.Equal(weight * build.MassProperties.Centre.X.Meters, aboutOrigin, 1e-9);
            Assert.Equal(build.Parts.Count, roots.Sum(load => load.Carried.Count));
        },
        cases: 200);

    [Fact]
    public void Without_a_rating_there_is_a_load_and_no_verdict()
    {
        var build = new PlacedBuild(new OrderedMap<PlacedPart>(
            [new("arm", new PlacedPart { Mass = Mass.FromKilograms(0.2), MassCentre = RigPoint.FromMetres(0.1, 0, 0) }),
                new("monitor", new PlacedPart { Mass = Mass.FromKilograms(0.5),
                Placement = Placement.AtEndOf("arm", Length.FromMeters(0.2)) })]));

        var load = JointLoad.All(build)[0];

        Assert.Equal("arm", load.Part);
        Assert.Equal(2 * 9.80665 * ((0.2 * 0.1) + (0.5 * 0.2)), load.Moment.NewtonMeters, 1e-12);
        Assert.Equal(new JointMargins(null, null), load.Against(new JointRating()));
        Assert.Equal(3 - load.Moment.NewtonMeters,
            load.Against(new JointRating(Moment: Torque.FromNewtonMeters(3))).Moment!.Value.NewtonMeters, 1e-12);
    }

    [Fact]
    public void Mount_and_support_together_carry_the_lens() =>
        Gen.Select(Gen.Double[1, 60], Gen.Double[0.02, 0.3], Gen.Double[1, 5000], Gen.Double[0, 1e5],
        Gen.Double[0.01, 0.3]).Holds(
        (weight, ahead, mount, support, at) =>
        {
            var load = Mount(mount, support, at).Under(Force.FromNewtons(weight), Length.FromMeters(ahead));
            Assert.Equal(weight * ahead, load.MountMoment.NewtonMeters + (load.SupportForce.Newtons * at), 1e-9);
        },
        cases: 200);

    // The limits: a stiff support takes W b/a, a stiff mount takes W b, and with no support the mount turns by W b/k_m.
    [Fact]
    public void Mount_limits()
    {
        var (weight, ahead) = (Force.FromNewtons(20), Length.FromMeters(0.1));

        Assert.Equal(20 * 0.1 / 0.08, Mount(500, 1e15, 0.08).Under(weight, ahead).SupportForce.Newtons, 1e-6);
        Assert.Equal(2, Mount(1e15, 1e4, 0.08).Under(weight, ahead).MountMoment.NewtonMeters, 1e-6);
        Assert.Equal(2.0 / 500, LensMount.Unsupported(RotationalStiffness.FromNewtonMetersPerRadian(500))
            .Under(weight, ahead).Rotation.Radians, 1e-15);
    }

    [Fact]
    public void Held_out_in_front_the_shoulder_carries_rig_and_arm()
    {
        var rig =
            new PlacedBuild(
            new OrderedMap<PlacedPart>([new("rig", new PlacedPart { Mass = Mass.FromKilograms(4),
            Placement = Placement.At(RigPoint.FromMetres(0.05, 0, 0)) })])).MassProperties;
        var hold = new HandHold(Length.Zero, Length.FromMeters(-0.4), Ratio.FromPercent(50), Mass.FromKilograms(3.5),
            Length.FromMeters(-0.2));

        Assert.Equal(2 * 9.80665 * 0.05, hold.WristMoment(rig).NewtonMeters, 1e-12);
        Assert.Equal(9.80665 * ((2 * 0.45) + (3.5 * 0.2)), hold.ShoulderMoment(rig).NewtonMeters, 1e-12);
    }

    private static LensMount Mount(double mount, double support, double at) =>
        new(RotationalStiffness.FromNewtonMetersPerRadian(mount), ForcePerLength.FromNewtonsPerMeter(support),
            Length.FromMeters(at));
}
