using Stockwright.Storage.Tests.Contract;

namespace Stockwright.Storage.Tests.Sqlite;

public sealed class SqliteKitchenTests : KitchenContract
{
    protected override TestDatabase NewDatabase() => new SqliteTestDatabase();
}

public sealed class SqliteRecipeTests : RecipeContract
{
    protected override TestDatabase NewDatabase() => new SqliteTestDatabase();
}

public sealed class SqliteLarderTests : LarderContract
{
    protected override TestDatabase NewDatabase() => new SqliteTestDatabase();
}

public sealed class SqlitePlanTests : PlanContract
{
    protected override TestDatabase NewDatabase() => new SqliteTestDatabase();
}

public sealed class SqliteBatchTests : BatchContract
{
    protected override TestDatabase NewDatabase() => new SqliteTestDatabase();
}

public sealed class SqliteLogTests : LogContract
{
    protected override TestDatabase NewDatabase() => new SqliteTestDatabase();
}

public sealed class SqliteKitchenScopeTests : KitchenScopeContract
{
    protected override TestDatabase NewDatabase() => new SqliteTestDatabase();
}
