using System.Text.Json;
using System.Text.Json.Nodes;
using Stockwright.Kitchen;
using Stockwright.Larder;
using Stockwright.Planning;

namespace Stockwright.Storage.Plans;

/// <summary>
/// A plan to be kept: what was asked, with the rows of the larder and the figures it was worked out with, and for a batch the plan that came of it.
/// It opens the same however kitchen, larder, figures and planner change.
/// </summary>
public sealed record StoredPlan
{
    /// <summary>Version written. Whoever changes it adds the step to it to <see cref="Upgrades"/>.</summary>
    public const int CurrentVersion = 1;

    private const string VersionName = "version";
    private const string RequestName = "request";

    /// <summary>Steps from each version to the next, the first from version 1.</summary>
    private static readonly IReadOnlyList<Action<JsonObject>> Upgrades = [];

    /// <summary>What was asked; its larder holds the rows it uses and no others.</summary>
    public required PlanRequest Request { get; init; }

    /// <summary>The plan that came of it; null where it is planned when it is opened.</summary>
    public BatchPlan? Plan { get; init; }

    /// <summary>What the cook calls the kitchen.</summary>
    public required string KitchenName { get; init; }

    /// <summary>What was asked of the stock beside the plan, as <see cref="PlanJson.Write"/> has it; null for nothing.</summary>
    public JsonNode? Questions { get; init; }

    /// <summary>The kitchen of then: the plan's pot first, its hob alone.</summary>
    public KitchenSetup Kitchen => new()
    {
        Name = KitchenName,
        TimeZoneId = Request.Schedule.Zone.Id,
        Site = Request.Site,
        Pots = [Request.Pot, .. Request.OtherPots.Where(pot => !string.Equals(pot.Id, Request.Pot.Id, StringComparison.Ordinal))],
        Hobs = [Request.Hob],
        Oven = Request.Oven,
        Trays = Request.Trays,
    };

    /// <summary>Takes a request to be kept.</summary>
    /// <param name="request">What is asked.</param>
    /// <param name="kitchenName">What the cook calls the kitchen.</param>
    /// <param name="questions">What is asked of the stock; null for nothing.</param>
    public static StoredPlan Of(PlanRequest request, string kitchenName, JsonNode? questions = null) =>
        new() { Request = Kept(request), KitchenName = kitchenName, Questions = questions };

    /// <summary>Takes a plan to be kept.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="kitchenName">What the cook calls the kitchen.</param>
    /// <param name="questions">What is asked of the stock; null for nothing.</param>
    public static StoredPlan Of(BatchPlan plan, string kitchenName, JsonNode? questions = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        PlanRequest kept = Kept(plan.Request);
        Timeline Of(Timeline timeline) => timeline with
        {
            NightChoices = [.. timeline.NightChoices.Select(choice => choice with { Request = choice.Request with { Larder = kept.Larder, Cuts = kept.Cuts } })],
        };
        return new()
        {
            Request = kept,
            Plan = plan with { Request = kept, Timeline = Of(plan.Timeline), OnePotTimeline = plan.OnePotTimeline is { } one ? Of(one) : null },
            KitchenName = kitchenName,
            Questions = questions,
        };
    }

    /// <summary>Reads a stored document.</summary>
    /// <exception cref="StoredDocumentException">The text is damaged or was written by a newer version.</exception>
    public static StoredPlan Parse(string json)
    {
        JsonObject document = Upgraded(json);
        JsonNode? request = document[RequestName];
        return new StoredPlan
        {
            Request = PlanJson.Read<PlanRequest>(request),
            Plan = document["plan"] is JsonObject plan ? PlanJson.Read<BatchPlan>(Joined(plan, request!.AsObject())) : null,
            KitchenName = (string?)document["kitchen"] ?? "",
            Questions = document["questions"]?.DeepClone(),
        } switch
        {
            { Plan: { } planned } whole => whole with { Request = planned.Request },
            var whole => whole,
        };
    }

    /// <summary>Writes the document as it is stored.</summary>
    public string ToJson()
    {
        JsonObject document = new() { [VersionName] = CurrentVersion, ["kitchen"] = KitchenName };
        if (Plan is { } plan)
        {
            JsonObject parts = PlanJson.Write(plan).AsObject();
            document[RequestName] = Taken(parts, RequestName);
            document["plan"] = Parted(parts, document[RequestName]!.AsObject());
        }
        else
        {
            document[RequestName] = PlanJson.Write(Request);
        }

        if (Questions is { } questions)
        {
            document["questions"] = questions.DeepClone();
        }

        return PlanJson.Text(document);
    }

    private static PlanRequest Kept(PlanRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        HashSet<string> used = [.. request.Recipe.IngredientIds];
        if (request.Goal is PlanGoal.UseBones goal)
        {
            used.UnionWith(goal.Bones.Select(bones => bones.IngredientId));
        }

        LarderTable larder = new(request.Larder.Ingredients.Where(row => used.Contains(row.Id)));
        return request with { Larder = larder, Cuts = request.Cuts.For(larder.Ingredients) };
    }

    private static JsonObject Upgraded(string json)
    {
        JsonObject document;
        int version;
        try
        {
            document = JsonNode.Parse(json) as JsonObject ?? throw new StoredDocumentException("The stored plan is empty.");
            version = document[VersionName]?.GetValue<int>() ?? throw new StoredDocumentException("The stored plan does not say its version.");
        }
        catch (Exception trouble) when (trouble is JsonException or InvalidOperationException or FormatException)
        {
            throw new StoredDocumentException($"The stored plan cannot be read: {trouble.Message}", trouble);
        }

        if (version is < 1 or > CurrentVersion)
        {
            throw new StoredDocumentException($"The stored plan has version {version}; this program reads up to version {CurrentVersion}.");
        }

        foreach (Action<JsonObject> upgrade in Upgrades.Skip(version - 1))
        {
            upgrade(document);
        }

        return document;
    }

    /// <summary>What stands in the request already is said once: an ingredient by its name, the request of another night by what differs.</summary>
    private static JsonObject Parted(JsonObject plan, JsonObject request)
    {
        foreach (JsonObject line in Objects(plan["amounts"]))
        {
            line["ingredient"] = line["ingredient"]!["id"]!.DeepClone();
        }

        foreach (JsonObject choice in Choices(plan))
        {
            JsonObject other = choice[RequestName]!.AsObject();
            foreach (string name in request.Select(part => part.Key).Union(other.Select(part => part.Key), StringComparer.Ordinal).ToArray())
            {
                if (JsonNode.DeepEquals(request[name], other[name]))
                {
                    other.Remove(name);
                }
                else if (!other.ContainsKey(name))
                {
                    other[name] = null;
                }
            }
        }

        return plan;
    }

    private static JsonObject Joined(JsonObject plan, JsonObject request)
    {
        plan[RequestName] = request.DeepClone();
        foreach (JsonObject line in Objects(plan["amounts"]))
        {
            string? id = (string?)line["ingredient"];
            line["ingredient"] = Objects(request["larder"]).FirstOrDefault(row => string.Equals((string?)row["id"], id, StringComparison.Ordinal))?.DeepClone();
        }

        foreach (JsonObject choice in Choices(plan))
        {
            JsonObject other = request.DeepClone().AsObject();
            foreach ((string name, JsonNode? part) in choice[RequestName] as JsonObject ?? [])
            {
                other[name] = part?.DeepClone();
            }

            choice[RequestName] = other;
        }

        return plan;
    }

    private static IEnumerable<JsonObject> Choices(JsonObject plan) =>
        Objects(plan["timeline"]?["nightChoices"]).Concat(Objects(plan["onePotTimeline"]?["nightChoices"]));

    private static IEnumerable<JsonObject> Objects(JsonNode? list) => (list as JsonArray ?? []).OfType<JsonObject>();

    private static JsonNode Taken(JsonObject parts, string name)
    {
        JsonNode part = parts[name]!;
        parts.Remove(name);
        return part;
    }
}
