namespace HingeSelector.Screening;

/// <summary>Which philosophy is of record for whom.</summary>
/// <param name="All">Every decision on file, those of the past and of the future included.</param>
public sealed record PhilosophyDecisions(IReadOnlyList<PhilosophyDecision> All)
{
    private const string Group = "training-group";

    /// <summary>Nothing decided.</summary>
    public static PhilosophyDecisions None { get; } = new([]);

    /// <summary>The decision in force for an athlete on a day: the latest one about the athlete, else the latest about the athlete's training group; null without one.</summary>
    public PhilosophyDecision? InForce(AthleteRecord athlete, DateOnly on)
        => Latest(All.Where(d => d.Athlete == athlete.Id), on)
            ?? (GroupOf(athlete) is { } group ? Latest(All.Where(d => d.TrainingGroup == group), on) : null);

    /// <summary>The training group of an athlete as typed; null without one.</summary>
    public static string? GroupOf(AthleteRecord athlete) => athlete.Find(Group) is { Value.IsKnown: true } answer ? answer.Typed : null;

    private static PhilosophyDecision? Latest(IEnumerable<PhilosophyDecision> decisions, DateOnly on) => decisions.Where(d => d.Since <= on).MaxBy(d => d.Since);
}
