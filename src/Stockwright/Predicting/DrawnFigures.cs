namespace Stockwright.Predicting;

/// <summary>The figures of one draw, by name; each is set by one row of <see cref="UncertainInput.All"/>.</summary>
internal readonly record struct DrawnFigures
{
    /// <summary>Loss of the covered surface over that of clean open water.</summary>
    public double Film { get; init; }

    /// <summary>
    /// The draw of the film itself, in deviations towards losing more: a batch with readings of its own moves along what they left uncertain
    /// (R.9), film and lid together.
    /// </summary>
    public double LossDeviations { get; init; }

    /// <summary>Times what the lid lets past.</summary>
    public double Lid { get; init; }

    /// <summary>Share of the hob's power that reaches the pot.</summary>
    public double Efficiency { get; init; }

    /// <summary>Share of clinging liquor.</summary>
    public double Clinging { get; init; }

    /// <summary>How much more liquor than usual the solids give, in deviations.</summary>
    public double ReleaseDeviations { get; init; }

    /// <summary>Share lost in straining.</summary>
    public double StrainLoss { get; init; }

    /// <summary>Share lost with the fat.</summary>
    public double DefatLoss { get; init; }

    /// <summary>Times the collagen of every cut.</summary>
    public double Collagen { get; init; }

    /// <summary>Times every soft rate.</summary>
    public double SoftRate { get; init; }

    /// <summary>Times every hard rate.</summary>
    public double HardRate { get; init; }

    /// <summary>Activation energy of the drawing, J/mol.</summary>
    public double CollagenActivation { get; init; }

    /// <summary>Breakdown in an hour at 98 °C.</summary>
    public double BreakdownPerHour { get; init; }

    /// <summary>Activation energy of the breakdown, J/mol.</summary>
    public double BreakdownActivation { get; init; }

    /// <summary>This kitchen's gelatin over the published figures.</summary>
    public double Kitchen { get; init; }

    /// <summary>Times the fat that comes free.</summary>
    public double FreedFat { get; init; }

    /// <summary>How much hotter than asked the simmer is kept, K.</summary>
    public double SimmerKelvins { get; init; }

    /// <summary>Times juices and minerals.</summary>
    public double OtherMatter { get; init; }

    /// <summary>Times sugars and sodium.</summary>
    public double SmallMatter { get; init; }

    /// <summary>Fat beaten in, share of the liquor.</summary>
    public double BeatenInFat { get; init; }
}
