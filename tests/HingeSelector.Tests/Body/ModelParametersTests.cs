using HingeSelector.Body;

namespace HingeSelector.Tests.Body;

public sealed class ModelParametersTests
{
    private static readonly string[] Grades = ["trial", "laboratory", "mechanics", "consensus", "practice"];

    [Fact]
    public void The_shipped_file_gives_every_parameter_in_the_order_of_the_code()
        => ModelFile.ParameterNodes.Select(p => p["parameter"].ToString()).ShouldBe(ModelParameters.Ids.Select(p => p.Id));

    [Fact]
    public void Every_shipped_parameter_has_a_grade_a_reason_and_a_source_or_says_that_it_has_none()
    {
        foreach (var p in ModelFile.ParameterNodes)
        {
            Grades.ShouldContain(p["grade"].ToString(), p["parameter"].ToString());
            p["because"].ToString().ShouldEndWith(".", customMessage: p["parameter"].ToString());
            var admits = p["because"].ToString().Contains("no source", StringComparison.Ordinal)
                || p["because"].ToString().Contains("from memory, not verified", StringComparison.Ordinal);
            (p["sources"].ToString() != "[ ]" || admits).ShouldBeTrue(p["parameter"].ToString());
        }
    }

    [Fact]
    public void Missing_unknown_and_impossible_parameters_are_listed_by_name()
    {
        var values = ModelParameters.Ids.ToDictionary(p => p.Id, _ => new ParameterValue(1, 0, 2));
        values.Remove("lumbar-share");
        values["lumber-share"] = new ParameterValue(20, 10, 30);
        values["bar-radius"] = new ParameterValue(double.NaN, 0, 1);
        var message = Should.Throw<ArgumentException>(() => new ModelParameters(values)).Message;
        message.ShouldContain("missing: lumbar-share;");
        message.ShouldContain("unknown: lumber-share;");
        message.ShouldContain("outside its own range: bar-radius.");
    }

    [Fact]
    public void Every_id_reaches_its_own_property()
    {
        // A value of its own for each id: a property wired to the wrong id shows up as a repeated number.
        var values = ModelParameters.Ids.Select((p, i) => (p.Id, Value: i + 1.0)).ToDictionary(p => p.Id, p => new ParameterValue(p.Value, p.Value, p.Value));
        var parameters = new ModelParameters(values);
        var numbers = typeof(ModelParameters).GetProperties()
            .Where(p => p.PropertyType == typeof(double) && p.GetIndexParameters().Length == 0)
            .ToDictionary(p => p.Name, p => (double)p.GetValue(parameters)!);
        numbers.Count.ShouldBe(ModelParameters.Ids.Count - 1);
        foreach (var (name, value) in numbers)
            ModelParameters.Ids[(int)value - 1].Id.Replace("-", "", StringComparison.Ordinal).ShouldBe(name, StringCompareShould.IgnoreCase);
        parameters.MeasuredSegmentError.Metres.ShouldBe(values["measured-segment-error"].Value);
    }
}
