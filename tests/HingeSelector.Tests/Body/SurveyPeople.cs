using HingeSelector.Body;
using HingeSelector.Quantities;
using nietras.SeparatedValues;

namespace HingeSelector.Tests.Body;

/// <summary>The 4,277 people of the shipped 2012 survey sample, each with the segments measured on that person.</summary>
internal static class SurveyPeople
{
    public static IReadOnlyList<BodyMeasures> All { get; } = Read();

    private static List<BodyMeasures> Read()
    {
        using var reader = Sep.Reader().FromFile(Path.Combine(ModelFile.RepositoryRoot, "tests", "data", "ansur2", "ansur2_dev.csv"));
        var people = new List<BodyMeasures>();
        foreach (var row in reader)
        {
            var knee = row["lateralfemoralepicondyleheight"].Parse<double>();
            var hip = row["trochanterionheight"].Parse<double>();
            people.Add(new BodyMeasures
            {
                Sex = row["sex"].ToString() == "F" ? Sex.Female : Sex.Male,
                AgeYears = row["age"].Parse<double>(),
                Stature = Millimetres(row["stature"].Parse<double>()),
                Mass = Mass.FromKilograms(row["weight_kg"].Parse<double>()),
                Shank = Millimetres(knee - row["lateralmalleolusheight"].Parse<double>()),
                Thigh = Millimetres(hip - knee),
                TrunkToAcromion = Millimetres(row["acromialheight"].Parse<double>() - hip),
                // Not shoulder-elbow plus elbow-grip, which counts the tip of the elbow twice (see the data's README).
                ArmToGrip = Millimetres(row["acromionradialelength"].Parse<double>() + row["forearmcenterofgriplength"].Parse<double>()),
            });
        }

        return people;
    }

    private static Length Millimetres(double value) => Length.FromMetres(value / 1000);
}
