namespace HingeSelector.Candidates;

/// <summary>A bar on blocks or pins is set down, whatever was asked while it still stood on the floor: it would bounce off.</summary>
internal static class RaisedBars
{
    private const string Lowering = "lowering";
    private const double Raised = 0.02;

    public static ChosenSetUp SetDown(ChosenSetUp chosen)
    {
        var raise = chosen.Candidate.Choice?.FirstTry.HandHeight.Metres - chosen.Candidate.Heights?.Standard;
        if (raise is not >= Raised || chosen.Wishes.Word(Lowering) != "dropped")
            return chosen;
        var words = new Dictionary<string, string>(chosen.Wishes.Words, StringComparer.Ordinal) { [Lowering] = "controlled" };
        return chosen with { Wishes = chosen.Wishes with { Words = words } };
    }
}
